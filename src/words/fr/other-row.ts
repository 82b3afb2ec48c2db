import type { words as english } from '../en/other-row.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  goBackHelp:
    'Choisissez le rang à tricoter ensuite. Les rangs qui le suivent comptent comme pas encore faits.',
  goBackTo: 'Rang {row} ensuite',
  olderRows: 'Rangs plus anciens',
  rowLine: '{side}, {count} sur l’aiguille',
  looking: 'Vous lisez le rang {row}.',
  inHand: 'Le rang en cours est le {place}.',
  lookingDone: 'Vous lisez le rang {row}. Tous les rangs de cette partie sont faits.',
  backToPlace: 'Retour au rang {row}',
  backToEnd: 'Retour à la fin',
  placeHere: 'Faire du rang {row} le prochain',
  rowBefore: 'Le rang d’avant',
  rowAfter: 'Le rang d’après',
};
