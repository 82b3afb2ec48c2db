import type { words as english } from '../en/length.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Mesurez de temps en temps : {length}',
  titleOpen: 'Tricotez jusqu’à la longueur que disent les explications',
  from: {
    one: 'Mesuré {where}. D’après le plan, il reste {count} rang.',
    other: 'Mesuré {where}. D’après le plan, il reste {count} rangs.',
  },
  start: 'depuis le bord de montage',
  here: 'depuis le début de ce passage',
  armhole: 'depuis le début de l’emmanchure',
  rib: 'depuis la fin des côtes',
  elsewhere: 'd’où le disent les explications',
  longEnough: 'Assez long',
  twoMore: 'Deux rangs de plus',
  oneFirst:
    'Ce passage peut finir après le rang suivant, pour que la suite commence sur l’endroit de l’ouvrage.',
};
