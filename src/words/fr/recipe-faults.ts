import type { words as english } from '../en/recipe-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'no name': 'Donnez-lui un nom.',
  blank: 'Il manque ici un nombre.',
  'not a whole number': '« {typedText} » n’est pas un nombre entier.',
  'not a measure': '« {typedText} » n’est pas un nombre au-dessus de 0.',
  'number too small': '{foundNumber}, c’est trop peu ; il en faut au moins {leastNumber}.',
  'part name twice': 'Une autre partie s’appelle aussi « {name} ». Donnez à celle-ci un autre nom.',
  'no such part':
    'Ses mailles viennent d’une partie qui n’est pas avant elle. Choisissez une partie antérieure.',
  'bound off':
    '« {name} » est rabattu, il n’y reste donc pas de mailles. Faites finir « {name} » par une séparation.',
  'bad makes': 'Une pièce se fait de 1 à 20 fois, pas {makes} fois.',
  'too much to plan':
    'Tous les rangs ensemble ont plus de {mostStitches} mailles, plus qu’on ne peut planifier d’un coup. Prenez moins de rangs, de mailles ou de pièces.',
  'too many parts': 'Une pièce a au plus {mostParts} parties, pas {parts}. Faites-en deux pièces.',
  'too many sections': 'Une partie a au plus {mostSections} sections, pas {sections}. Réunissez-en.',
  'part too long':
    'Une partie a au plus {mostRows} rangs, celui où elle est rabattue compris, pas {rows}. Faites-en deux parties.',
  'no parts': 'La pièce n’a pas encore de partie. Ajoutez-en une avec un montage.',
  'nothing picked up': 'Dites le long de quel bord les mailles sont relevées, et combien.',
  'bad stitches': 'Il en faut de 1 à {mostStitches} mailles, pas {stitches}.',
  'bad rows': 'Une section a au plus {mostRows} rangs, pas {rows}.',
  'bad needle': 'Une aiguille a au plus 50\u00a0mm d’épaisseur.',
  'bad count': 'Il faut ici des nombres entiers.',
  'fabric multiple':
    'Pour {fabric}, {stitches} mailles ne tombent pas juste : prenez-en {belowStitches} ou {aboveStitches}, ou un autre point.',
  'split too wide':
    '« {name} » ne laisse que {haveStitches} mailles ; ses parties en prennent plus. Prenez-en moins ici.',
  'split does not share':
    '« {name} » laisse {leftStitches} mailles et les parties qui suivent en prennent {sumStitches}. Ensemble elles doivent les prendre toutes.',
  'shaping needs more stitches':
    'Le façonnage demande {needStitches} mailles et il n’y en a que {haveStitches}. Façonnez moins souvent, ou commencez avec plus de mailles.',
  'mixed shaping':
    'Deux façonnages se rencontrent ici, qui demandent chacun un rang à soi. Déplacez l’un des deux de deux rangs.',
  'no centre stitch':
    'Il n’y a pas de maille du milieu avec une maille de chaque côté. Vérifiez les mailles à sa droite.',
  'shaping outside the section':
    'Cela façonnerait le rang {row}, mais la section a {rows} rangs. Donnez-lui plus de rangs, ou façonnez moins de fois.',
  'edge step too large':
    'À un bord, une ou deux mailles peuvent partir en un rang, pas {byStitches}. Rabattez ou montez plutôt un groupe.',
  'shaped twice': 'Le rang {row} est façonné deux fois pareil au même endroit. Gardez l’un des deux.',
  'group on the wrong side':
    'Le rang {row} est un rang {side} et commence {startsEdge}. Les mailles {edge} viennent un rang plus tôt ou plus tard.',
  'too many for one row':
    'Un rang de {stitches} mailles a place pour {mostTimes} de celles-ci, pas {times}. Mettez le reste à un rang ultérieur.',
  'no gauge':
    '{pieceName} n’a pas d’échantillon et ne peut donc pas passer à un autre. Donnez-lui-en un d’abord.',
  'not as asked':
    'Cela ne se tricote pas ainsi. Ce qui peut aider : une autre taille, ou d’autres aiguilles, pour que votre échantillon approche de celui qui était prévu.',
  'bad gauge':
    'Un tel échantillon n’est pas possible. Comptez encore une fois mailles et rangs sur un échantillon plat et lavé.',
  'rows in words':
    'Ses rangs sont écrits maille par maille et ne peuvent pas passer à un autre échantillon. Prenez celui pour lequel ils ont été écrits.',
  'bad weight': '{pieceName} ne peut pas peser {grams}. Pesez encore une fois.',
  'plan disproved':
    'Le plan dit {expectedStitches} mailles, et le tricoter en donne {foundStitches}. C’est un défaut de Ridgeline ; rien n’a été enregistré.',
  'repeat does not come out':
    'La répétition ne tombe pas juste : {spanStitches} mailles ne se partagent pas par {byStitches}.',
  'shaping does not fit':
    '{rows} rangs ont place pour {mostTimes} rangs de façonnage, et il en faut {times}. Donnez plus de rangs, ou façonnez moins de fois.',
  'stitches left over': 'Le rang laisse {leftStitches} des {onNeedleStitches} mailles sans les tricoter.',
  'endless repeat': 'La répétition ne prend aucune maille et ne finirait jamais. Ajoutez-y une maille.',
  'turn on the wrong side':
    'Le rang {row} est un rang {side} et commence {startsEdge} ; il ne peut tourner qu’avant l’autre bord. Tournez un rang plus tôt ou plus tard.',
} as const satisfies Translation<typeof english>;
