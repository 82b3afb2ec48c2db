import type { words as english } from '../en/ui.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  close: 'Schließen',
  more: 'Eins mehr: {label}',
  less: 'Eins weniger: {label}',
  deleteDigit: 'Letzte Ziffer löschen',
  justNow: 'gerade eben',
  mapKeys: 'Pfeiltasten gehen von Reihe zu Reihe, die Eingabetaste liest die Reihe.',
  mapLabel: 'Zeichnung von {piece}',
  mapRow: '{part}, Reihe {row}: {stitches}',
  mapRowShaping: '{part}, Reihe {row}, {shaping}: {stitches}',
  scale: 'Maßstab: {length}',
  nextRows: 'Nächste Reihen',
  rowsBetween: { one: '{count} Reihe ohne Formung', other: '{count} Reihen ohne Formung' },
};
