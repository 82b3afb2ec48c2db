import type { words as english } from '../en/pace.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  paceRows: 'Rangs par heure',
  paceStitches: 'Mailles par heure',
  paceLeft: 'Reste à tricoter',
  paceDone: 'Environ {time} de tricot jusqu’à la fin de cette partie.',
  paceByDay: 'À {day} par semaine, comme ces quatre dernières semaines : le {date}.',
  paceFew: 'L’allure apparaît après quelques rangs d’une même séance.',
  paceFrom: {
    one: 'Sur {count} rang, pauses non comptées.',
    other: 'Sur {count} rangs, pauses non comptées.',
  },
  sittings: 'Séances',
  sittingLine: '{date} : {rows}, {time}',
  sittingsPlot: {
    one: 'La dernière séance ({count}) : rangs de chacune',
    other: 'Les {count} dernières séances : rangs de chacune',
  },
};
