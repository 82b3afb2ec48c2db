import type { words as english } from '../en/ways.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Deux appareils ont pris ici deux chemins',
  open: 'Deux chemins ici : choisir',
  ask: 'Lequel est sur vos aiguilles ? L’autre est gardé, sous Défaire.',
  here: 'cet appareil',
  elsewhere: 'l’autre appareil',
  choose: 'Rang {row} sur {rows}, {stitches}',
  chooseStart: 'Rien de tricoté, {rows} rangs',
  left: 'Rang {row} sur {rows}, {stitches}, de {device} : vous l’avez laissé en réunissant deux appareils.',
  takeUp: 'Le reprendre',
};
