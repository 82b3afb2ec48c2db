import type { words as english } from '../en/part-end.ts';
import type { Translation } from '../message.ts';

/** The end of a part: what becomes of the stitches, what it took, what comes next. */
export const words: Translation<typeof english> = {
  partDone: '{part} ist fertig',
  partRests: '{part}: Die Maschen ruhen',
  partDivides: '{part} ist bis zur Teilung gestrickt',
  endBoundOff: 'Alle Maschen sind abgekettet. Den Faden abschneiden und durch die letzte Masche ziehen.',
  endHold: {
    one: 'Die übrige {count} Masche auf einen Maschenraffer oder einen Faden legen.',
    other: 'Die übrigen {count} Maschen auf einen Maschenraffer oder einen Faden legen.',
  },
  endSplit: {
    one: 'Die {count} Masche ruhen lassen, den Faden nicht abschneiden; die nächsten Teile nehmen sie auf.',
    other:
      'Die {count} Maschen ruhen lassen, den Faden nicht abschneiden; die nächsten Teile nehmen sie auf.',
  },
  beginNext: '{what} beginnen',
  continueNext: 'Weiter mit {what}',
  tookRows: { one: '{count} Reihe', other: '{count} Reihen' },
  tookSittings: { one: '{count} Strickzeit', other: '{count} Strickzeiten' },
  tookDays: { one: 'in {count} Tag', other: 'in {count} Tagen' },
  toMakingUp: 'Fertigstellen',
  allDone: 'Alle Teile von {garment} sind gestrickt.',
  toGarment: 'Zum Strickstück',
  garmentKnitted: 'Gestrickt bis zur letzten Masche',
  garmentFinished: 'Fertig: gestrickt und zusammengenäht',
  notMadeUp: 'Noch nicht zusammengenäht.',
  madeUpSoFar: 'Fertigstellen: {count} von {all} Schritten erledigt.',
  toRecord: 'Wie es gestrickt wurde',
};
