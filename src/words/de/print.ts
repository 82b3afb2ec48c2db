import type { words as english } from '../en/print.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  makes: 'Zu stricken',
  key: 'Ein Kästchen für jede Reihe. ▶ und ein schwarzer Rand: eine Reihe mit Formung. Danach die Maschen zählen.',
  bindOff: 'Abketten',
  row: 'Reihe',
  rows: '{first} bis {last}',
  work: 'Stricken',
  after: 'Maschen danach',
  measures: 'höchstens {width} breit, {height} hoch, am Anfang {castOn} breit',
};
