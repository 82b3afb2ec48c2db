import type { words as english } from '../en/pace.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  paceRows: 'Reihen in der Stunde',
  paceStitches: 'Maschen in der Stunde',
  paceLeft: 'Noch zu stricken',
  paceDone: 'Etwa {time} Stricken bis zum Ende dieses Teils.',
  paceByDay: 'Mit {day} je Woche wie in den letzten vier Wochen: am {date}.',
  paceFew: 'Das Tempo zeigt sich nach ein paar Reihen am Stück.',
  paceFrom: { one: 'Aus {count} Reihe, ohne Pausen.', other: 'Aus {count} Reihen, ohne Pausen.' },
  sittings: 'Strickzeiten',
  sittingLine: '{date}: {rows}, {time}',
  sittingsPlot: {
    one: 'Die letzte {count} Strickzeit: Reihen in jeder',
    other: 'Die letzten {count} Strickzeiten: Reihen in jeder',
  },
};
