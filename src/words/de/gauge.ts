import type { words as english } from '../en/gauge.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  measuredIn: 'Gestrickt in',
  in: 'Gestrickt in: {fabric}.',
  unsaid: 'noch nicht gesagt',
  needle: 'Mit Nadel, mm',
  needleNumber: 'Mit Nadel',
  guessed: '{fabric}: geschätzt nach deiner Maschenprobe ({from})',
  askTitle: 'Ist diese Maschenprobe kraus rechts gestrickt?',
  askHelp:
    'Die meisten Reihen sind hier kraus rechts, und nirgends steht, worin {stitches} Maschen und {rows} Reihen auf {length} gezählt sind. Bisher galten sie als glatt rechts. Deine Antwort stellt Maße und Zeichnungen richtig; keine Reihe ändert sich.',
  askYes: 'Ja, kraus rechts',
  askNo: 'Nein, glatt rechts',
};
