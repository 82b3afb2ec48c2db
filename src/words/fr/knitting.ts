import type { words as english } from '../en/knitting.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  opening: 'Ouverture…',
  toWorkbasket: 'Retour à la corbeille à ouvrage',
  backTo: 'Retour à {garment}',
  rowOf: 'Rang {row} sur {rows}',
  toGo: { one: 'encore {count} rang', other: 'encore {count} rangs' },
  lastRow: 'dernier rang',
  afterRow: { one: 'maille après ce rang', other: 'mailles après ce rang' },
  onlyRead: 'en lecture seule',
  fewer: '{count} de moins',
  moreThan: '{count} de plus',
  shapingRow: 'Façonnage',
  bindOffRow: 'Rabattre',
  done: 'Rang fait',
  undo: 'Annuler',
  lock: 'Verrouiller',
  legend: 'Ce que veulent dire les mots',
  announce: 'Rang {row} sur {rows}, {side}. {what}. {count} après ce rang.',
  announceEnd: '{part} : dernier rang fait.',
  setUp: 'Avant le rang 1',
  setUpCastOn: {
    one: 'Monter {count} maille avec les aiguilles {needle}.',
    other: 'Monter {count} mailles avec les aiguilles {needle}.',
  },
  setUpPickUp:
    'Endroit face à soi, avec les aiguilles {needle}, relever et tricoter {list} : {total} en tout.',
  setUpPickUpEdge: '{count} le long de « {along} »',
  setUpHeldEdge: '{count} en attente, bord « {along} »',
  setUpTake: {
    one: 'Reprendre la maille {edge} de « {part} » ({count}) sur les aiguilles {needle} ; rattacher le fil s’il n’est pas à cet endroit. Le rang 1 est un rang {first}.',
    other:
      'Reprendre les {count} mailles {edge} de « {part} » sur les aiguilles {needle} ; rattacher le fil s’il n’est pas à cet endroit. Le rang 1 est un rang {first}.',
  },
  atMiddle: 'au milieu',
  goBack: 'Revenir en arrière',
  tools: 'Outils',
};
