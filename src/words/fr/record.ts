import type { words as english } from '../en/record.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Comme il a été tricoté',
  reading: 'Lecture du journal…',
  waiting: 'Pas commencés : {list}',
  rows: '{rows} rangs sur {total}',
  days: 'Du {from} au {to}',
  day: 'Le {from}',
  time: '{time} aux aiguilles, pauses non comptées',
  needles: 'Aiguilles : {list}',
  took: 'Il pesait {grams}.',
  ripped: { one: 'Défait une fois.', other: 'Défait {count} fois.' },
  reworked: { one: 'Replanifié une fois.', other: 'Replanifié {count} fois.' },
  checked: { one: 'Compté au rang {list}.', other: 'Compté aux rangs {list}.' },
  note: 'Rang {row} : {text}',
  again: 'Le tricoter à nouveau comme il a été fait',
  againHelp: 'Un nouvel ouvrage avec les changements faits en chemin ; celui-ci reste tel quel.',
  againName: '{garment}, bis',
  design: 'En tracer un autre d’après ses chiffres',
  designHelp:
    'Les mesures, l’échantillon et les choix dont il a été tracé, à changer et à tracer de nouveau : une autre taille, une autre encolure. Celui-ci reste tel quel.',
  designNotKept:
    'Les chiffres n’ont pas pu être gardés sur cet appareil. Rien n’a changé ; essayez encore une fois.',
  designAsk: 'Un autre tracé est commencé',
  designAskText:
    'Un seul tracé en cours est gardé. Ces chiffres prendraient sa place, et ce que vous y avez saisi serait perdu.',
  designOther: 'Continuer avec l’autre',
  designReplace: 'Mettre ceux-ci à la place',
  likeStraight:
    'Un nouvel ouvrage commence avec tous ses chiffres. Changez largeur, longueurs et encolure pour la taille voulue : mailles et rangs suivent.',
  likePieces:
    'Un nouvel ouvrage commence avec ses pièces telles quelles. Aucune règle ne dit comment elles grandissent : changez les mailles et les rangs de chacune pour la taille voulue, et de même là où deux sont cousues ensemble.',
  likeText: 'Le texte dont il a été repris est rouvert : choisissez-y une autre de ses tailles.',
  likeYarn:
    'Ses fils suivent, sans ce que vous en avez, et ses rayures aussi : autant de rangs de chaque couleur, à partir des mêmes sections.',
  likeYarnNot: 'Ses fils et ses rayures ne sont pas repris : saisissez-les à nouveau.',
  likeStays: 'Cet ouvrage reste tel quel.',
  likeBegin: 'Le commencer',
  likeOther: 'Un autre est commencé',
  likeOtherText:
    'Un seul à la fois est gardé en cours. Celui-ci prendrait sa place, et ce que vous y avez saisi serait perdu.',
  cannot: 'Il ne peut pas être refait tel quel',
};
