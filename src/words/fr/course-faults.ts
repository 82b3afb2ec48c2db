import type { words as english } from '../en/course-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'nothing left': 'Tous les rangs de cette partie sont tricotés ; il ne reste rien à replanifier.',
  'shaping to come does not fit':
    '{times} rangs de façonnage sont encore à venir et {rows} rangs ont place pour {mostTimes}. Donnez plus de rangs, ou défaites.',
  'too few rows for its shaping':
    'Ce serait trop peu de rangs : le rang {row} est à façonner, et il y en aurait {rows}. Donnez-en plus.',
  'no stretch ends there':
    'Aucun passage de cette partie ne peut finir à {heightMm}. Choisissez un passage encore à tricoter, et une hauteur au-dessus de 0.',
  'too few rows before the neck':
    'Il ne reste que {leftRows} rangs à tricoter avant l’encolure, et elle ne peut pas commencer avant maintenant. Déplacez-la de moins de rangs.',
  'fewer rows than knitted':
    '{rows} rangs, c’est moins que les {workedRows} qui en sont déjà tricotés. Donnez-en plus.',
  'cannot be taken up':
    '{offStitches} mailles ne peuvent pas être absorbées dans les rangs qui restent. Défaites quelques rangs, ou donnez-en plus à la partie.',
  'measure again':
    '{measuredMm}, c’est peu vraisemblable : {plannedMm} étaient prévus pour ces rangs. Mesurez encore une fois.',
  'no neck ahead':
    'L’encolure ne peut être déplacée que tant que l’on tricote la partie au-dessous, et d’un nombre pair de rangs.',
  'no lifeline': 'Il n’y a pas de fil de vie sous le rang {fromRow}.',
  'no firm ground': 'Sous le rang {fromRow}, il n’y a aucun rang dont le compte ait été vérifié et juste.',
  'nothing to rip': 'Le rang {row} n’est pas sous le rang {fromRow} ; il n’y a rien à défaire.',
  'row outside': 'Cette partie a les rangs 1 à {rows} ; le rang {row} n’en est pas.',
  'all done': 'Les deux sont tricotés jusqu’au bout.',
  'not level':
    'Ils ont {rows} rangs d’écart. Tricotez seul celui qui est en retard jusqu’à ce qu’ils soient au même rang.',
  'sides differ':
    'L’un arrive à un rang endroit et l’autre à un rang envers ; ici ils ne peuvent pas partager une aiguille.',
} as const satisfies Translation<typeof english>;
