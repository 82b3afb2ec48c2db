import type { words as english } from '../en/other-row.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  goBackHelp:
    'Wähle die Reihe, die als Nächste gestrickt wird. Die Reihen danach gelten als noch nicht gestrickt.',
  goBackTo: 'Reihe {row} als Nächste',
  olderRows: 'Ältere Reihen',
  rowLine: '{side}, {count} auf der Nadel',
  looking: 'Du liest Reihe {row}.',
  inHand: 'Auf der Nadel ist Reihe {place}.',
  lookingDone: 'Du liest Reihe {row}. Alle Reihen dieses Teils sind gestrickt.',
  backToPlace: 'Zurück zu Reihe {row}',
  backToEnd: 'Zurück zum Ende',
  placeHere: 'Reihe {row} als Nächste nehmen',
  rowBefore: 'Die Reihe davor',
  rowAfter: 'Die Reihe danach',
};
