import type { words as english } from '../en/making-up.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Fertigstellen',
  none: 'Die Teile verraten noch nicht, was woran genäht wird. Gib beim Bearbeiten an, was jedes Teil im Strickstück ist.',
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
    one: 'Die {count} abgekettete Masche am Unterarm an die Seiten des Ärmels nähen.',
    other: 'Die {count} abgeketteten Maschen am Unterarm an die Seiten des Ärmels nähen.',
  },
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
  ends: 'Fäden vernähen',
  endsHelp: 'Entlang der Nähte, nicht quer durch das Gestrick.',
  cords:
    'Für Kinder: keine Kordeln oder Bänder am Hals, Knöpfe fest annähen. Es gelten die örtlichen Vorschriften.',
  tick: 'Erledigt: {step}',
};
