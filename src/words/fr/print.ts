import type { words as english } from '../en/print.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  makes: 'À tricoter',
  key: 'Une case par rang. ▶ et un bord noir : un rang de façonnage. Comptez les mailles après lui.',
  bindOff: 'Rabattre',
  row: 'Rang',
  rows: '{first} à {last}',
  work: 'Tricoter',
  after: 'Mailles après',
  measures: '{width} de large au plus, {height} de haut, {castOn} de large au début',
};
