import type { words as english } from '../en/lap.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  before: 'Avant le rang {row} :',
  takenBack: 'Annulé.',
  changeNeedle: 'prendre les aiguilles {size}',
  loosely: 'ce bord passe par la tête : rabattre souplement, ou avec une aiguille plus grosse',
  shows: 'montré sur {host}',
  markLoosely: 'souplement',
  changeColour: 'prendre {colour}',
  measure: 'mesurer, {length} d’après le plan',
  colour: 'en {colour}',
  ridge: 'côte mousse {ridge}',
  rowRidge: '{row} ({ridge})',
  nextShaping: {
    one: 'Le rang suivant est un rang de façonnage : {shaping}',
    other: 'Façonnage dans {count} rangs, au rang {row} : {shaping}',
  },
  noMoreShaping: 'Plus de façonnage dans cette partie',
  view: '{where}, côté {side} face à vous. {next}',
  soFar: 'jusqu’ici',
  atRow: 'à ce rang',
  toEndOf: 'jusqu’à la fin de {section}',
  toEnd: 'jusqu’à la fin',
  toRow: 'jusqu’au rang {row}',
  markNeedle: 'aiguilles {size}',
  markMeasure: 'mesurer : {length}',
  rowNo: 'rang {row}',
  map: 'Où vous en êtes',
  readAloud: 'Lire à voix haute',
  allSettings: 'Tous les réglages',
  ofThePiece: 'Vu de l’endroit de la pièce, c’est {edge}.',
};
