import type { words as english } from '../en/mends.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Ce qui ne correspond plus',
  places: { one: '{count} endroit ne correspond plus', other: '{count} endroits ne correspondent plus' },
  matchesAll: 'Tout ce à quoi il est cousu correspond encore.',
  looking: 'Recherche de ce qui y remédie…',
  offRows:
    '{piece} et {to} sont cousus ensemble : {now} rangs contre {other} (avant : {was}), {length} d’écart.',
  offStitches: '{piece} et {to} sont cousus ensemble : {now} mailles contre {other} (avant : {was}).',
  offLength: '{piece} et {to} sont cousus ensemble : un bord de {now} contre {other}, {length} d’écart.',
  offAbove:
    '{piece} et {to} sont côte à côte au-dessus du dessous de bras : {now} rangs contre {other} (avant : {was}), {length} d’écart.',
  offBands:
    '{piece} et {to} sont l’un sur l’autre : {now} rangs contre {other} (avant : {was}), {length} d’écart.',
  offPair: '{piece} : {now} rangs d’un côté et {other} de l’autre (avant : {was}).',
  offEdgeLonger:
    '{band} : son bord « {edge} » est maintenant plus long de {length}, avec place pour {fit} mailles au lieu de {stitches}.',
  offEdgeShorter:
    '{band} : son bord « {edge} » est maintenant plus court de {length}, avec place pour {fit} mailles au lieu de {stitches}.',
  unjoined: '{piece}, nº {make} : rien n’est joint à certains de ses bords.',
  rowsMore: {
    one: 'Faire aussi {piece} plus long de {count} rang, dans « {section} »',
    other: 'Faire aussi {piece} plus long de {count} rangs, dans « {section} »',
  },
  rowsFewer: {
    one: 'Faire aussi {piece} plus court de {count} rang, dans « {section} »',
    other: 'Faire aussi {piece} plus court de {count} rangs, dans « {section} »',
  },
  wider: 'Élargir {piece} de {count} mailles en haut',
  narrower: 'Rétrécir {piece} de {count} mailles en haut',
  shoulderWider: {
    one: 'Faire aussi l’épaule de {piece} plus large de {count} maille, et son encolure plus étroite d’autant',
    other:
      'Faire aussi l’épaule de {piece} plus large de {count} mailles, et son encolure plus étroite d’autant',
  },
  shoulderNarrower: {
    one: 'Faire aussi l’épaule de {piece} plus étroite de {count} maille, et son encolure plus large d’autant',
    other:
      'Faire aussi l’épaule de {piece} plus étroite de {count} mailles, et son encolure plus large d’autant',
  },
  castOnMore: {
    one: 'Monter plus de mailles pour {piece}, {count} maille par épaule : toute la pièce est plus large',
    other: 'Monter plus de mailles pour {piece}, {count} mailles par épaule : toute la pièce est plus large',
  },
  castOnFewer: {
    one: 'Monter moins de mailles pour {piece}, {count} maille par épaule : toute la pièce est plus étroite',
    other:
      'Monter moins de mailles pour {piece}, {count} mailles par épaule : toute la pièce est plus étroite',
  },
  pickUp: '{band} : relever {now} au lieu de {was} le long de {edges}',
  pickUpEach: '{band} : relever {now} au lieu de {was} le long de chacun : {edges}',
  and: '{first} ; {second}',
  makeNo: '{piece}, nº {list},',
  begun: 'Elle est sur les aiguilles : seuls changent les rangs pas encore tricotés.',
  done: 'L’autre pièce est déjà tricotée.',
  ease: 'En cousant, après chaque série de {every}, en prendre une de plus sur le bord le plus long.',
  tooFar: 'C’est trop d’écart pour être soutenu : regardez les deux avant de continuer.',
  bandDone: 'La bordure est déjà relevée : son bord y sera resserré ou étiré.',
  noMend: 'Aucune autre longueur de l’autre pièce n’y remédie seule : regardez les deux.',
  withIt: 'Enregistré avec',
  leave: 'Laisser de côté',
};
