import type { words as english } from '../en/pattern-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'stitch expected':
    'Une maille était attendue à la colonne {column} de cette ligne. Changez-y le texte, ou laissez la ligne de côté.',
  'stitch or repeat expected':
    'Une maille ou une répétition était attendue à la colonne {column} de cette ligne. Changez-y le texte, ou laissez la ligne de côté.',
  'bracket expected':
    'Une parenthèse est encore ouverte : « {bracketText} » était attendu à la colonne {column} de cette ligne. Fermez-la là.',
  'nothing before the repeat':
    'À la colonne {column} de cette ligne quelque chose est à répéter, et aucune maille n’est avant. Écrivez ce qui est répété.',
  'nested too deep': 'Les parenthèses ont ici {depth} niveaux. Écrivez en entier celles de l’intérieur.',
  'work after a turn': 'Quelque chose est tricoté après le demi-tour. Écrivez-le comme un rang à part.',
  'not enough stitches':
    'Cela demande {needStitches} mailles et il y en a {haveStitches} sur l’aiguille. Vérifiez le compte avant ce rang.',
  'bound off too many':
    '{wantedStitches} mailles sont à rabattre et il y en a {haveStitches} sur l’aiguille. Vérifiez le compte avant ce rang.',
  'too many stitches':
    '{stitches} mailles, c’est plus qu’une aiguille n’en tient. Vérifiez les chiffres de cette ligne.',
  'too long': 'Une partie a au plus {mostRows} rangs. Vérifiez les chiffres de cette ligne.',
  'too many pieces read':
    'Un ouvrage a au plus {mostPieces} pièces. À partir d’ici rien n’est lu : copiez la suite comme un autre ouvrage.',
  'too many parts begun':
    '« {pieceName} » est commencé ici plus de {mostTimes} fois. À partir d’ici rien n’est lu : donnez à la pièce suivante son propre titre.',
  'count contradicts':
    'Le texte dit {statedStitches} mailles ; ses instructions en laissent {foundStitches}. L’un des deux est faux.',
  'side differs':
    'Le texte appelle ceci un rang {saidSide} ; compté depuis le début, c’est un rang {foundSide}. Vérifiez combien de rangs viennent avant.',
  'worked in rounds':
    'Ceci se tricote en rond, et les tours ne sont pas comptés ici comme des rangs. La ligne reste dans ses propres mots ; dites les mailles après elle, ou écrivez-la en rangs.',
  'count not known':
    'Pour répartir {changeStitches} régulièrement, il faut savoir les mailles sur l’aiguille. Dites le compte avant ce rang.',
  'no marker': 'Aucun marqueur n’est connu plus loin sur ce rang. Dites d’abord où il est placé.',
  'centre not in the middle':
    '{stitches} mailles ne peuvent pas en avoir {centreStitches} en leur milieu. Les deux doivent être pairs, ou les deux impairs.',
  'nothing on the needle':
    'Il n’y a pas de mailles sur l’aiguille ici. Montez, relevez ou reprenez-en d’abord.',
  'nothing rests': 'Aucune maille n’est connue comme en attente ici. Dites d’abord lesquelles y sont mises.',
  'nothing to match':
    'Il n’y a pas de premier côté auquel celui-ci pourrait répondre. Écrivez le premier côté.',
  'stitches wait':
    '{stitches} mailles restent en attente ici, et le texte ne dit pas ce qu’elles deviennent. Dites plus bas ce qu’on en fait.',
  'no rows to repeat': 'Aucun rang à répéter n’est connu ici. Écrivez-les avant cette ligne.',
  'row not known': 'Le rang {rowName} n’est pas connu ici. Écrivez-le avant cette ligne.',
  'piece not known': 'Aucun « {pieceName} » à suivre n’est connu ici. Mettez cette pièce d’abord.',
  'place not known': 'On ne sait pas ici où c’est. Dites plutôt la longueur ou le nombre de rangs.',
  'longer already':
    'Les rangs d’avant font la pièce plus longue de {overMm} que les {wantedMm} demandés ici. Vérifiez l’échantillon et les rangs.',
  'fabric not known':
    'Comment se tricote « {name} » n’est pas dit avant cette ligne. Écrivez ses rangs avant, ou nommez un point qui y est.',
  'not a multiple':
    '{stitches} mailles ne sont pas un multiple de {ofStitches} plus {plusStitches}, que demande {name}. Vérifiez le compte avant.',
  'pattern row does not come out':
    'Le rang {row} prend {takesStitches} mailles par répétition et ne tombe pas juste sur {stitches} mailles, un multiple de {ofStitches} plus {plusStitches}.',
  'pattern does not return':
    'Après ses {rows} rangs le point a {afterStitches} mailles alors qu’il commençait avec {startStitches}.',
  'sizes differ':
    'Cette liste n’a pas autant de nombres que les explications ont de tailles ({sizes}). Donnez un nombre par taille, ou prenez une taille seule.',
  'rows already worked': 'Ce passage a déjà {workedRows} rangs ; il ne peut pas en avoir {rows}.',
  'side of the last row':
    'Avec {rows} rangs le rang suivant commencerait de l’autre côté. Prenez un rang de plus ou de moins.',
  'text reads otherwise':
    'Le texte n’est plus lu comme il l’était quand ces rangs ont été tricotés. Les rangs restent tels quels.',
  'no sizes': 'Choisissez une taille à écrire.',
} as const satisfies Translation<typeof english>;
