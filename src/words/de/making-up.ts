import type { words as english } from '../en/making-up.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Fertigstellen',
  none: 'Die Teile verraten noch nicht, was woran genäht wird. Gib beim Bearbeiten an, was jedes Teil im Strickstück ist.',
  drawn: 'Zeichnung von {pieces}: die Kanten, die verbunden werden, sind hervorgehoben.',
  done: '{count} von {all} Schritten erledigt',
  block: '{piece} spannen',
  blockMakes: '{piece} spannen, {count}-mal',
  nos: '{step}, Nr. {list}',
  blockTo: '{width} breit, {height} hoch. Anfeuchten, auf diese Maße stecken, trocknen lassen.',
  shoulders: 'Schulternähte',
  shouldersEqual: {
    one: '{count} Masche auf jeder Seite beider Nähte: Masche an Masche.',
    other: '{count} Maschen auf jeder Seite beider Nähte: Masche an Masche.',
  },
  shouldersEased:
    '{back} am Rücken, {front} am Vorderteil: nach je {every} eine mehr von der längeren Kante nehmen.',
  doNotMatch:
    '{first} auf der einen, {second} auf der anderen Seite: das passt nicht zusammen. Eines der beiden Teile ist anders geplant, als das andere es braucht; vor dem Nähen beide ansehen.',
  shoulderFirst: 'Rechte Schulternaht',
  shoulderEqual: {
    one: '{count} Masche auf jeder Seite: Masche an Masche.',
    other: '{count} Maschen auf jeder Seite: Masche an Masche.',
  },
  shoulderLater: 'Die linke Schulter bleibt offen, bis die Blende fertig ist: sie wird in Reihen gestrickt.',
  grafted: 'Beide Kanten von den Nadeln weg im Maschenstich verbinden.',
  threeNeedle: 'Rechts auf rechts legen und beide Kanten mit einer dritten Nadel zusammen abketten.',
  shouldersOrder: 'Für eine Blende in Reihen bleibt eine Schulter offen, bis die Blende fertig ist.',
  pickUp: '{band} aufnehmen',
  neckband: 'Halsblende',
  pickUpSide: 'an jeder Seite des Ausschnitts: {stitches}, also {ratio} der {rows} Reihen',
  pickUpFront: 'vorderer Ausschnitt: {stitches}, eine je Masche',
  pickUpBack: 'hinterer Ausschnitt: {stitches}, eine je Masche',
  pickUpRatio: '{stitches} von {rows}',
  pickUpTotal: 'Insgesamt {total}.',
  neckTotal: 'Insgesamt etwa {total}, passend zu 2×2-Rippen. Noch ist keine Blende geplant.',
  pickUpAlong: 'entlang „{along}“: {stitches}',
  pickUpRows: 'Entlang von Reihen {ratio} aufnehmen.',
  pickUpKnit: 'Blende stricken',
  sleeves: '{piece} einsetzen',
  sleevesMarker:
    'An jeder Seitenkante {rows} Reihen ({length}) unter der Schulternaht einen Maschenmarkierer setzen.',
  sleevesQuarters: 'Viertelpunkte, vom Unterarm hinauf gezählt: Reihen {rows}.',
  sleevesUnderarm: {
    one: 'Die {count} abgekettete Masche am Unterarm an die des Ärmels nähen: Masche an Masche.',
    other: 'Die {count} abgeketteten Maschen am Unterarm an die des Ärmels nähen: Masche an Masche.',
  },
  sleevesNotch: {
    one: 'Die {count} abgekettete Masche am Unterarm an die obersten {rows} Reihen der Ärmelseite nähen.',
    other: 'Die {count} abgeketteten Maschen am Unterarm an die obersten {rows} Reihen der Ärmelseite nähen.',
  },
  raglan: '{piece} einnähen: Raglanlinien',
  raglanFour: 'Alle vier Linien, vom Unterarm hinauf zum Hals:',
  raglanThree:
    'Drei Linien, vom Unterarm hinauf zum Hals: vorn links, vorn rechts, hinten rechts. Die linke am Rücken bleibt offen, bis die Blende fertig ist.',
  raglanEased:
    '{first} Reihen am Ärmel, {second} am Rumpf: nach je {every} eine mehr von der längeren Kante nehmen.',
  close: '{band} schließen',
  closeShoulder: 'Zuerst die linke Schulternaht:',
  closeRaglan: 'Zuerst die offene Raglanlinie, hinten links:',
  closeEnds: {
    one: 'Die Enden ({band}): {count} Reihe auf jeder Seite, Reihe an Reihe.',
    other: 'Die Enden ({band}): {count} Reihen auf jeder Seite, Reihe an Reihe.',
  },
  forgotten: 'Mit nichts verbunden',
  forgottenRows: {
    one: '{count} Reihe, {piece}: {edge}.',
    other: '{count} Reihen, {piece}: {edge}.',
  },
  forgottenStitches: {
    one: '{count} Masche, {piece}: {edge}.',
    other: '{count} Maschen, {piece}: {edge}.',
  },
  edgeRight: '{part}, rechter Rand',
  edgeLeft: '{part}, linker Rand',
  edgeTop: '{part}, oben',
  edgeStart: '{part}, Anfang',
  offTitle: 'Was nicht zusammenpasst',
  offPickUp: '{band}: {stitches} Maschen werden aufgenommen, wo die Kante Platz für etwa {fit} hat.',
  offTwice: 'Eine Kante ({piece}) würde an zwei andere genäht.',
  offNotYet: '{piece} würde über eine Naht hinweg aufgenommen oder genäht, die noch offen ist.',
  finished: 'Maße des fertigen Stücks',
  finishedChest: 'Brustumfang: {length}',
  finishedLength: 'Länge: {length}',
  finishedNape: 'Vom Nacken bis zum Bündchen: {length}',
  finishedArm: 'Oberarmumfang: {length}',
  finishedWrist: 'Handgelenkumfang: {length}',
  finishedNeck: 'Halsumfang: {length}',
  finishedSeams: 'Für die Nähte ist von jeder genähten Kante eine Masche abgezogen.',
  sleevesFit: 'Die Oberkante des Ärmels misst {top}, das Armloch {armhole}: sie passen zusammen.',
  sleevesEase:
    'Die Oberkante des Ärmels misst {top}, das Armloch {armhole}: die längere zwischen den Viertelpunkten gleichmäßig einhalten.',
  side: 'Seitennähte',
  seamEqual: {
    one: '{count} Reihe auf jeder Seite: Reihe an Reihe, im Matratzenstich.',
    other: '{count} Reihen auf jeder Seite: Reihe an Reihe, im Matratzenstich.',
  },
  seamEased: '{first} Reihen: {a}, {second}: {b}; nach je {every} eine mehr von der längeren Kante nehmen.',
  sleeveSeams: 'Ärmelnähte',
  opening: 'Den Schlitz im Rückenteil schließen',
  openingLoop: {
    one: 'Er ist {count} Reihe tief. Am Hals auf einer Seite einen Knopf annähen. Auf der anderen zwei Fäden als Schlinge legen, durch die der Knopf gerade geht, und sie mit Knopflochstichen umnähen.',
    other:
      'Er ist {count} Reihen tief. Am Hals auf einer Seite einen Knopf annähen. Auf der anderen zwei Fäden als Schlinge legen, durch die der Knopf gerade geht, und sie mit Knopflochstichen umnähen.',
  },
  openingTry:
    'Zuerst über den Kopf probieren. Bei einem kleinen Kind muss der Knopf halten; die örtlichen Regeln gelten.',
  ends: 'Fäden vernähen',
  endsHelp: 'Entlang der Nähte, nicht quer durch das Gestrick.',
  cords:
    'Für Kinder: keine Kordeln oder Bänder am Hals, Knöpfe fest annähen. Es gelten die örtlichen Vorschriften.',
  tick: 'Erledigt: {step}',
};
