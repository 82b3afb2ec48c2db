import type { words as english } from '../en/ways.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Deux appareils ont pris ici deux chemins',
  open: 'Deux chemins ici : choisir',
  ask: 'Lequel est sur vos aiguilles ? L’autre est gardé, sous Défaire.',
  here: 'cet appareil',
  elsewhere: 'l’autre appareil',
  choose: 'Rang {row} tricoté',
  chooseStart: 'Rien de tricoté, {rows} rangs',
  left: 'Rang {row} tricoté, {stitches}, de {device} : vous l’avez laissé en réunissant deux appareils.',
  takeUp: 'Le reprendre',
};
