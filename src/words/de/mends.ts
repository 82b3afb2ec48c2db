import type { words as english } from '../en/mends.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Was nicht mehr passt',
  places: { one: '{count} Stelle passt nicht mehr', other: '{count} Stellen passen nicht mehr' },
  matchesAll: 'Alles, woran es genäht wird, passt noch.',
  looking: 'Es wird gesucht, was hilft …',
  offRows:
    '{piece} und {to} werden zusammengenäht: {now} Reihen gegen {other} (vorher: {was}), {length} Unterschied.',
  offStitches: '{piece} und {to} werden zusammengenäht: {now} Maschen gegen {other} (vorher: {was}).',
  offLength:
    '{piece} und {to} werden zusammengenäht: eine Kante von {now} gegen {other}, {length} Unterschied.',
  offAbove:
    '{piece} und {to} liegen über der Achsel nebeneinander: {now} Reihen gegen {other} (vorher: {was}), {length} Unterschied.',
  offBands:
    '{piece} und {to} liegen übereinander: {now} Reihen gegen {other} (vorher: {was}), {length} Unterschied.',
  offPair: '{piece}: {now} Reihen am einen und {other} am anderen (vorher: {was}).',
  offEdgeLonger:
    '{band}: die Kante „{edge}“ ist jetzt {length} länger, mit Platz für {fit} Maschen statt {stitches}.',
  offEdgeShorter:
    '{band}: die Kante „{edge}“ ist jetzt {length} kürzer, mit Platz für {fit} Maschen statt {stitches}.',
  unjoined: '{piece}, Nr. {make}: An manche Kanten wird nichts genäht.',
  rowsMore: {
    one: 'Auch {piece} {count} Reihe länger stricken, in „{section}“',
    other: 'Auch {piece} {count} Reihen länger stricken, in „{section}“',
  },
  rowsFewer: {
    one: 'Auch {piece} {count} Reihe kürzer stricken, in „{section}“',
    other: 'Auch {piece} {count} Reihen kürzer stricken, in „{section}“',
  },
  wider: '{piece} oben um {count} Maschen breiter stricken',
  narrower: '{piece} oben um {count} Maschen schmaler stricken',
  shoulderWider: {
    one: 'Auch die Schulter von {piece} {count} Masche breiter stricken, den Halsausschnitt um so viel schmaler',
    other:
      'Auch die Schulter von {piece} {count} Maschen breiter stricken, den Halsausschnitt um so viel schmaler',
  },
  shoulderNarrower: {
    one: 'Auch die Schulter von {piece} {count} Masche schmaler stricken, den Halsausschnitt um so viel breiter',
    other:
      'Auch die Schulter von {piece} {count} Maschen schmaler stricken, den Halsausschnitt um so viel breiter',
  },
  castOnMore: {
    one: 'Für {piece} mehr anschlagen, {count} Masche je Schulter: Das ganze Teil wird breiter',
    other: 'Für {piece} mehr anschlagen, {count} Maschen je Schulter: Das ganze Teil wird breiter',
  },
  castOnFewer: {
    one: 'Für {piece} weniger anschlagen, {count} Masche je Schulter: Das ganze Teil wird schmaler',
    other: 'Für {piece} weniger anschlagen, {count} Maschen je Schulter: Das ganze Teil wird schmaler',
  },
  pickUp: '{band}: {now} statt {was} auffassen, entlang {edges}',
  pickUpEach: '{band}: je {now} statt {was} auffassen, entlang {edges}',
  and: '{first}; {second}',
  makeNo: '{piece}, Nr. {list},',
  begun: 'Es ist auf den Nadeln: Nur noch nicht gestrickte Reihen ändern sich.',
  done: 'Das andere Teil ist schon gestrickt.',
  ease: 'Nimm beim Nähen nach je {every} eine mehr von der längeren Kante.',
  tooFar: 'Das ist zu viel, um es einzuhalten: Sieh dir beide an, bevor du weiterstrickst.',
  bandDone: 'Die Blende ist schon angestrickt: Ihre Kante wird dort eingehalten oder gedehnt.',
  noMend: 'Keine andere Länge des anderen Teils behebt das allein: Sieh dir beide an.',
  withIt: 'Wird mit gespeichert',
  leave: 'Weglassen',
};
