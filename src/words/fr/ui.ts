import type { words as english } from '../en/ui.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  close: 'Fermer',
  more: 'Un de plus : {label}',
  less: 'Un de moins : {label}',
  deleteDigit: 'Effacer le dernier chiffre',
  justNow: 'à l’instant',
  mapKeys: 'Les flèches vont de rang en rang, Entrée lit le rang.',
  mapLabel: 'Dessin de {piece}',
  mapRow: '{part}, rang {row} : {stitches}',
  mapRowShaping: '{part}, rang {row}, {shaping} : {stitches}',
  scale: 'Échelle : {length}',
  nextRows: 'Rangs à venir',
  rowsBetween: { one: '{count} rang sans façonnage', other: '{count} rangs sans façonnage' },
};
