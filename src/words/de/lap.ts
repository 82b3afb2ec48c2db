import type { words as english } from '../en/lap.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  before: 'Vor Reihe {row}:',
  takenBack: 'Zurückgenommen.',
  changeNeedle: 'zu Nadel {size} wechseln',
  loosely: 'die Kante geht über den Kopf: locker abketten oder mit dickerer Nadel',
  shows: 'gezeigt bei {host}',
  markLoosely: 'locker',
  changeColour: 'zu {colour} wechseln',
  measure: 'messen, geplant sind {length}',
  colour: 'in {colour}',
  ridge: 'Rippe {ridge}',
  rowRidge: '{row} ({ridge})',
  nextShaping: {
    one: 'Die nächste Reihe formt: {shaping}',
    other: 'Formen in {count} Reihen, Reihe {row}: {shaping}',
  },
  noMoreShaping: 'Kein Formen mehr in diesem Teil',
  view: '{where}, wie es in der {side} vor dir liegt. {next}',
  soFar: 'bis hier',
  atRow: 'bei dieser Reihe',
  toEndOf: 'bis Ende {section}',
  toEnd: 'bis zum Ende',
  toRow: 'bis Reihe {row}',
  markNeedle: 'Nadel {size}',
  markMeasure: 'messen: {length}',
  rowNo: 'Reihe {row}',
  map: 'Wo du bist',
  readAloud: 'Vorlesen',
  allSettings: 'Alle Einstellungen',
  ofThePiece: 'Von der rechten Seite des Teils gesehen ist das {edge}.',
};
