import type { words as english } from '../en/part-end.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  partDone: '{part} : terminé',
  partRests: '{part} : ses mailles restent en attente',
  partDivides: '{part} est tricoté jusqu’à la séparation',
  endBoundOff: 'Toutes les mailles sont rabattues. Coupez le fil et passez-le dans la dernière maille.',
  endHold: {
    one: 'Mettez la maille restante ({count}) en attente sur un arrêt de mailles ou un fil.',
    other: 'Mettez les {count} mailles restantes en attente sur un arrêt de mailles ou un fil.',
  },
  endSplit: {
    one: 'Laissez la maille ({count}) en attente et le fil non coupé ; les parties suivantes la reprennent.',
    other:
      'Laissez les {count} mailles en attente et le fil non coupé ; les parties suivantes les reprennent.',
  },
  beginNext: 'Commencer {what}',
  continueNext: 'Continuer avec {what}',
  tookRows: { one: '{count} rang', other: '{count} rangs' },
  tookSittings: { one: '{count} séance', other: '{count} séances' },
  tookDays: { one: 'en {count} jour', other: 'en {count} jours' },
  toMakingUp: 'Assembler',
  allDone: 'Toutes les pièces de {garment} sont tricotées.',
  toGarment: 'Voir l’ouvrage',
  garmentKnitted: 'Tricoté jusqu’à la dernière maille',
  garmentFinished: 'Terminé : tricoté et assemblé',
  notMadeUp: 'Pas encore assemblé.',
  madeUpSoFar: 'Assemblage : {count} étapes sur {all} faites.',
  toRecord: 'Comment il a été tricoté',
};
