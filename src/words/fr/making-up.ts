import type { words as english } from '../en/making-up.ts';
import type { Translation } from '../message.ts';

export const words: Translation<typeof english> = {
  title: 'Assemblage',
  none: 'Ses pièces ne disent pas encore quoi se coud à quoi. Dites dans l’éditeur ce qu’est chaque pièce dans l’ouvrage.',
  drawn: 'L’ouvrage à mesure qu’il s’assemble : {done} étapes sur {all} faites.',
  drawnInHand: 'En cours : {step}.',
  sewn: 'Cousu',
  hand: 'En cours',
  open: 'Pas encore',
  blocked: 'Bloqué',
  pickedUp: 'Relevé',
  isDone: 'Fait',
  undo: 'Pas encore fait',
  another: 'Une autre étape',
  markers: 'Où vont les marqueurs',
  done: '{count} étapes sur {all} faites',
  block: 'Bloquer {piece}',
  blockMakes: 'Bloquer {piece}, {count} fois',
  nos: '{step}, nº\u00a0{list}',
  blockTo: '{width} au plus large, {height} de haut. Mouillez, épinglez à ces mesures, laissez sécher.',
  wornLeft: '{step}, devant gauche une fois porté',
  wornRight: '{step}, devant droit une fois porté',
  shoulders: 'Coutures d’épaule',
  shouldersEqual: {
    one: '{count} maille de chaque côté des deux coutures : maille à maille.',
    other: '{count} mailles de chaque côté des deux coutures : maille à maille.',
  },
  shouldersEased:
    '{back} au dos, {front} au devant : après chaque série de {every}, en prendre une de plus sur le bord le plus long.',
  doNotMatch:
    '{first} d’un côté, {second} de l’autre : cela ne correspond pas. L’une des deux pièces est prévue autrement que l’autre ne le demande ; regardez les deux avant de coudre.',
  shoulderFirst: 'Couture de l’épaule droite',
  shoulderEqual: {
    one: '{count} maille de chaque côté : maille à maille.',
    other: '{count} mailles de chaque côté : maille à maille.',
  },
  shoulderLater:
    'L’épaule gauche reste ouverte jusqu’à ce que la bordure soit faite : elle se tricote en rangs.',
  shoulderButtoned: 'L’épaule gauche n’est pas cousue : elle se boutonne.',
  grafted: 'Remaillez les deux bords ensemble, depuis les deux aiguilles.',
  threeNeedle: 'Endroit contre endroit, rabattez les deux bords à la fois avec une troisième aiguille.',
  shouldersOrder:
    'Pour une bordure tricotée à plat, laissez une épaule ouverte jusqu’à ce que la bordure soit faite.',
  pickUp: 'Relever : {band}',
  neckband: 'bordure d’encolure',
  pickUpSide: 'chaque côté de l’encolure : {stitches}, soit {ratio} de ses {rows} rangs',
  pickUpFront: 'encolure devant : {stitches}, une pour une',
  pickUpBack: 'encolure dos : {stitches}, une pour une',
  pickUpRatio: '{stitches} sur {rows}',
  pickUpTotal: 'En tout {total}.',
  neckTotal: 'En tout environ {total}, pour convenir à des côtes 2/2. Aucune bordure n’est encore prévue.',
  pickUpAlong: 'le long de « {along} » : {stitches}',
  pickUpRows: 'Le long des rangs, relevez {ratio}.',
  pickUpKnit: 'Tricoter la bordure',
  sleeves: 'Monter : {piece}',
  sleevesBoth: 'Monter les deux manches',
  sleevesMarker:
    'Mettez un marqueur à chaque bord de couture de côté, {rows} rangs ({length}) sous la couture d’épaule.',
  sleevesTop: 'Épinglez le milieu du haut de la manche à la couture d’épaule, puis les points de quart.',
  sleevesQuarters: 'Points de quart, comptés en montant du dessous de bras : rangs {rows}.',
  sleevesUnderarm: {
    one: 'Cousez la maille rabattue ({count}) du dessous de bras à celle de la manche : maille à maille.',
    other: 'Cousez les {count} mailles rabattues du dessous de bras à celles de la manche : maille à maille.',
  },
  sleevesNotch: {
    one: 'Cousez la maille rabattue ({count}) du dessous de bras aux {rows} rangs les plus hauts du côté de la manche.',
    other:
      'Cousez les {count} mailles rabattues du dessous de bras aux {rows} rangs les plus hauts du côté de la manche.',
  },
  raglan: 'Coudre {piece} : lignes de raglan',
  raglanBoth: 'Coudre les deux manches : lignes de raglan',
  raglanFour: 'Les quatre lignes, du dessous de bras jusqu’à l’encolure :',
  raglanOthers:
    'Trois lignes, du dessous de bras jusqu’à l’encolure : devant gauche, devant droit, dos droit :',
  raglanOpening:
    'Celle du dos gauche seulement du dessous de bras jusqu’à son ouverture ; au-dessus elle n’est pas cousue :',
  raglanThree:
    'Trois lignes, du dessous de bras jusqu’à l’encolure : devant gauche, devant droit, dos droit. Celle du dos gauche reste ouverte jusqu’à ce que la bordure soit faite.',
  raglanEased:
    '{first} rangs à la manche, {second} au corps : après chaque série de {every}, en prendre un de plus sur le bord le plus long.',
  close: 'Fermer : {band}',
  closeShoulder: 'D’abord la couture de l’épaule gauche :',
  closeRaglan: 'D’abord la ligne de raglan ouverte, au dos à gauche :',
  closeEnds: {
    one: 'Les extrémités ({band}) : {count} rang de chaque côté, rang à rang.',
    other: 'Les extrémités ({band}) : {count} rangs de chaque côté, rang à rang.',
  },
  forgotten: 'Joint à rien',
  forgottenRows: {
    one: '{count} rang de {piece} : {edge}.',
    other: '{count} rangs de {piece} : {edge}.',
  },
  forgottenStitches: {
    one: '{count} maille de {piece} : {edge}.',
    other: '{count} mailles de {piece} : {edge}.',
  },
  edgeRight: 'bord droit',
  edgeLeft: 'bord gauche',
  edgeTop: 'haut',
  edgeStart: 'début',
  edgeOfPart: '{part}, {edge}',
  offTitle: 'Ce qui ne se rejoint pas',
  offPickUp: '{band} : relève {stitches} là où le bord a place pour environ {fit}.',
  offTwice: 'Un bord de {piece} serait cousu à deux autres.',
  offNotYet: '{piece} serait relevé ou cousu par-dessus une couture qui n’est pas encore cousue.',
  finished: 'Mesures une fois assemblé',
  finishedChest: 'Tour de poitrine : {length}',
  finishedLength: 'Longueur : {length}',
  finishedNape: 'De la nuque au poignet : {length}',
  finishedArm: 'Tour du haut du bras : {length}',
  finishedWrist: 'Tour de poignet : {length}',
  finishedNeck: 'Tour d’encolure : {length}',
  finishedSeams: 'Une maille de chaque bord cousu est déduite pour les coutures.',
  sleevesFit: 'Le haut de la manche mesure {top}, l’emmanchure {armhole} : ils se rejoignent.',
  sleevesEase:
    'Le haut de la manche mesure {top}, l’emmanchure {armhole} : soutenez le plus long régulièrement entre les points de quart.',
  side: 'Coutures de côté',
  seamEqual: {
    one: '{count} rang de chaque côté : rang à rang.',
    other: '{count} rangs de chaque côté : rang à rang.',
  },
  seamTakes: 'Cousez à une maille entière de chaque bord ; elle part dans la couture.',
  seamEased:
    '{a} : {first} rangs, {b} : {second} ; après chaque série de {every}, en prendre un de plus sur le bord le plus long.',
  sleeveSeams: 'Coutures de manche',
  opening: 'Fermer l’ouverture du dos',
  openingRaglan: 'Fermer l’ouverture du raglan',
  lapShoulder: 'Boutonner l’épaule gauche',
  lapOnBack: {
    one: 'Posez la bande d’épaule, haute de {count} rang, sur le dos : l’épaule rabattue du dos rejoint le rang où la bande a été relevée. Cousez les deux épaisseurs ensemble à l’emmanchure.',
    other:
      'Posez la bande d’épaule, haute de {count} rangs, sur le dos : l’épaule rabattue du dos rejoint le rang où la bande a été relevée. Cousez les deux épaisseurs ensemble à l’emmanchure.',
  },
  lapButtons: {
    one: 'Cousez {count} bouton au dos, sous la boutonnière.',
    other: 'Cousez {count} boutons au dos, un sous chaque boutonnière.',
  },
  lapEnvelope: 'Croiser les épaules',
  lapBands: {
    one: 'La bande du dos, haute de {count} rang, est sur le devant, et celle du devant sous le dos : les épaules rabattues se rejoignent. Cousez les épaisseurs ensemble à chaque emmanchure ; la manche se coud à travers les deux, son emmanchure mesurée une fois, sur l’épaisseur du dessus.',
    other:
      'La bande du dos, haute de {count} rangs, est sur le devant, et celle du devant sous le dos : les épaules rabattues se rejoignent. Cousez les épaisseurs ensemble à chaque emmanchure ; la manche se coud à travers les deux, son emmanchure mesurée une fois, sur l’épaisseur du dessus.',
  },
  lapPlacket: 'Fermer la patte en bas',
  lapPlacketSewn: {
    one: 'Posez la bande à boutonnières sur l’autre : chacune a {count} rang de large. Cousez son extrémité inférieure aux mailles rabattues au-dessous, et celle de l’autre derrière.',
    other:
      'Posez la bande à boutonnières sur l’autre : chacune a {count} rangs de large. Cousez son extrémité inférieure aux mailles rabattues au-dessous, et celle de l’autre derrière.',
  },
  lapTry: 'Essayez-le par-dessus la tête avant de coudre les manches.',
  openingLoop: {
    one: 'Elle a {count} rang de profondeur. Cousez un bouton d’un côté à l’encolure. De l’autre, tendez deux brins en une bride où le bouton passe juste, et recouvrez-les au point de boutonnière.',
    other:
      'Elle a {count} rangs de profondeur. Cousez un bouton d’un côté à l’encolure. De l’autre, tendez deux brins en une bride où le bouton passe juste, et recouvrez-les au point de boutonnière.',
  },
  openingLoopRaglan: {
    one: 'Elle a {count} rang de profondeur. Cousez un bouton au bord du dos, à l’encolure. Au bord de la manche, tendez deux brins en une bride où le bouton passe juste, et recouvrez-les au point de boutonnière.',
    other:
      'Elle a {count} rangs de profondeur. Cousez un bouton au bord du dos, à l’encolure. Au bord de la manche, tendez deux brins en une bride où le bouton passe juste, et recouvrez-les au point de boutonnière.',
  },
  openingTry:
    'Essayez-le d’abord par-dessus la tête. Pour un petit enfant le bouton doit tenir ; suivez les règles en vigueur chez vous.',
  buttons: 'Coudre les boutons',
  buttonsAt: {
    one: '{band} : la boutonnière ({count}) est à {list} mailles au-dessus de son extrémité inférieure.',
    other: '{band} : les {count} boutonnières sont à {list} mailles au-dessus de son extrémité inférieure.',
  },
  buttonsOn: 'Cousez les boutons sur « {band} » aux mêmes mailles, chacun en face de sa boutonnière.',
  buttonsOther:
    'Cousez les boutons sur la bande de l’autre devant aux mêmes mailles, chacun en face de sa boutonnière.',
  ends: 'Rentrer les fils',
  endsHelp: 'Le long des coutures, pas à travers le tricot.',
  whyBlock: 'Épinglé à ses mesures, chaque bord rejoint celui auquel il est cousu.',
  whySleeves: 'Maintenant, tant que le corps est encore ouvert et à plat.',
  whySide: 'Après les manches, pour que côté et dessous de bras soient une seule ligne.',
  whyEnds: 'En dernier, puisque les coutures les cachent.',
  cords:
    'Pour un vêtement d’enfant : ni cordons ni rubans à l’encolure, des boutons cousus pour tenir. Suivez les règles en vigueur chez vous.',
  join: 'Joindre deux bords',
  joinHelp: 'Choisissez deux bords, sur les dessins ou dans la liste, et comment ils sont joints.',
  joinEdges: 'Bords auxquels rien n’est joint',
  joinHow: 'Comment',
  wayMattress: 'Point de matelas',
  wayThreeNeedle: 'Trois aiguilles, rabattus ensemble',
  wayGrafted: 'Remaillés',
  waySewn: 'Cousus à plat',
  joinThem: 'Les joindre',
  joinTwo: 'Choisissez d’abord deux bords.',
  joinedTitle: 'Joindre {first} à {second}',
  joinedRows: '{first} rangs d’un côté, {second} de l’autre.',
  joinedStitches: '{first} mailles d’un côté, {second} de l’autre.',
  joinedLengths: '{first} d’un côté, {second} de l’autre.',
  joinedEased: 'Après chaque série de {every}, en prendre une de plus sur le bord le plus long.',
  joinedEven: 'Soutenez le plus long régulièrement.',
  joinedGone:
    'L’un de ses bords n’existe plus, puisqu’une pièce a changé. Défaites la jonction et refaites-la.',
  joinedGoneTitle: 'Joint à la main',
  apart: 'Défaire la jonction',
  byMattress: 'Au point de matelas, l’endroit face à vous.',
  bySewn: 'Bord à bord, à plat, sans relief.',
  edgeNamed: '{piece} : {edge}',
  edgeRows: '{edge}, {count} rangs',
  edgeStitches: '{edge}, {count} mailles',
};
