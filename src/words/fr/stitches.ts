import type { Side } from '../../knit/row/step.ts';
import type { CableName, Crossing, Gloss, Glossary } from '../gloss.ts';

const incInto = (times: string): string =>
  `Piquer ${times} fois dans la même maille, tour à tour devant et derrière, avant de la lâcher de l’aiguille gauche.`;

/** Ce qu’est chaque maille et comment elle se tricote, en mots à nous. */
export const glossary: Glossary = {
  k: {
    name: 'maille endroit',
    how: 'Fil derrière. Piquer l’aiguille droite dans la boucle par devant, tirer le fil, lâcher l’ancienne boucle.',
  },
  p: {
    name: 'maille envers',
    how: 'Fil devant. Piquer l’aiguille droite dans la boucle par derrière, vers soi, tirer le fil, lâcher l’ancienne boucle.',
  },
  sl: {
    name: 'glisser',
    how: 'Passer la maille sur l’aiguille droite sans la tricoter, pointe contre pointe, sans la tourner.',
  },
  'sl wyif': {
    name: 'glisser, fil devant',
    how: 'Amener le fil vers soi et passer la maille sans la tricoter ; le fil reste devant elle.',
  },
  'sl wyib': {
    name: 'glisser, fil derrière',
    how: 'Laisser le fil derrière et passer la maille sans la tricoter.',
  },
  'k tbl': {
    name: 'maille torse à l’endroit',
    how: 'Piquer dans le brin arrière de la maille et la tricoter à l’endroit ; elle se tord.',
  },
  'p tbl': {
    name: 'maille torse à l’envers',
    how: 'Piquer par derrière dans le brin arrière de la maille et la tricoter à l’envers ; elle se tord.',
  },
  'k1 below': {
    name: 'maille endroit piquée au rang inférieur',
    how: 'Piquer dans la maille juste sous la suivante et la tricoter à l’endroit ; celle du dessus tombe avec.',
  },
  'p1 below': {
    name: 'maille envers piquée au rang inférieur',
    how: 'Piquer dans la maille juste sous la suivante et la tricoter à l’envers ; celle du dessus tombe avec.',
  },
  patt: {
    name: 'continuer le point',
    how: 'Continuer comme les mailles du dessous le montrent : ce que le point a ici, à ce rang.',
  },
  unworked: {
    name: 'tourner',
    how: 'Tourner l’ouvrage ici et laisser les mailles derrière comme elles sont. Au retour, glisser la première maille ou en faire une maille double, pareil à chaque demi-tour ; le rang qui passera dessus plus tard ferme chaque trou.',
  },
  'join yarn': {
    name: 'rattacher le fil',
    how: 'Le fil pend ailleurs : le couper, ou prendre une autre pelote, et commencer ici. Laisser environ 15\u00a0cm.',
  },
  'wrap next st': {
    name: 'envelopper la maille suivante',
    how: 'Passer la maille suivante sans la tricoter, mener le fil autour de son pied de l’autre côté de l’ouvrage, remettre la maille ; puis tourner. Ainsi aucun trou ne s’ouvre au demi-tour.',
  },
  'picking up each wrap': {
    name: 'reprendre chaque fil enroulé',
    how: 'Là où un fil entoure le pied d’une maille, le relever sur l’aiguille gauche et le tricoter avec sa maille. Au point mousse il peut rester : il ne se voit pas.',
  },
  ds: {
    name: 'maille double',
    how: 'Fil devant, glisser la première maille ; tirer le fil par-dessus l’aiguille vers l’arrière jusqu’à ce que les deux brins de la maille soient dessus. Elle compte pour une maille.',
  },
  'working each ds as one st': {
    name: 'tricoter chaque maille double comme une seule',
    how: 'Piquer dans les deux brins d’une maille double et les tricoter ensemble, comme la seule maille qu’ils sont.',
  },
  mb: {
    name: 'nope',
    how: 'Tricoter plusieurs mailles dans une seule, aller et venir dessus comme le disent les explications, puis les réunir en une.',
  },
  k2tog: {
    name: '2 mailles ensemble à l’endroit',
    how: 'Piquer dans les deux boucles suivantes à la fois, comme si elles n’en faisaient qu’une, et les tricoter. Une maille de moins ; elle penche à droite.',
  },
  p2tog: {
    name: '2 mailles ensemble à l’envers',
    how: 'Tricoter les deux boucles suivantes à l’envers comme une seule. Une maille de moins ; vue de l’autre côté elle penche à droite.',
  },
  ssk: {
    name: '2 glissées, ensemble à l’endroit',
    how: 'Glisser deux mailles une à une comme à l’endroit, piquer l’aiguille gauche devant et les tricoter ensemble à l’endroit. Une maille de moins ; elle penche à gauche.',
  },
  ssp: {
    name: '2 glissées, ensemble à l’envers',
    how: 'Glisser deux mailles une à une comme à l’endroit, les rendre à l’aiguille gauche et les tricoter ensemble à l’envers par leurs brins arrière. Une maille de moins.',
  },
  skp: {
    name: 'surjet simple',
    how: 'Glisser une maille comme à l’endroit, tricoter la suivante, rabattre la maille glissée par-dessus. Une maille de moins ; elle penche à gauche.',
  },
  spp: {
    name: 'surjet simple à l’envers',
    how: 'Glisser une maille, tricoter la suivante à l’envers, rabattre la maille glissée par-dessus. Une maille de moins.',
  },
  sp2p: {
    name: 'surjet double à l’envers',
    how: 'Glisser une maille, tricoter les deux suivantes ensemble à l’envers, rabattre la maille glissée. Deux mailles de moins.',
  },
  'k2tog tbl': {
    name: '2 mailles ensemble torses à l’endroit',
    how: 'Tricoter ensemble à l’endroit les deux boucles suivantes par leurs brins arrière. Une maille de moins ; elle penche à gauche.',
  },
  'p2tog tbl': {
    name: '2 mailles ensemble torses à l’envers',
    how: 'Par derrière, piquer dans le brin arrière de la deuxième maille puis de la première, et les tricoter ensemble à l’envers. Une maille de moins.',
  },
  k3tog: {
    name: '3 mailles ensemble à l’endroit',
    how: 'Tricoter trois boucles comme une seule. Deux mailles de moins ; elles penchent à droite.',
  },
  p3tog: {
    name: '3 mailles ensemble à l’envers',
    how: 'Tricoter trois boucles à l’envers comme une seule. Deux mailles de moins.',
  },
  'k3tog tbl': {
    name: '3 mailles ensemble torses à l’endroit',
    how: 'Tricoter ensemble trois boucles par leurs brins arrière. Deux mailles de moins ; elles penchent à gauche.',
  },
  'p3tog tbl': {
    name: '3 mailles ensemble torses à l’envers',
    how: 'Tricoter ensemble à l’envers trois boucles par leurs brins arrière, en venant de derrière. Deux mailles de moins.',
  },
  sssk: {
    name: '3 glissées, ensemble à l’endroit',
    how: 'Glisser trois mailles une à une comme à l’endroit ; piquer l’aiguille gauche devant et les tricoter ensemble. Deux mailles de moins ; elles penchent à gauche.',
  },
  sssp: {
    name: '3 glissées, ensemble à l’envers',
    how: 'Glisser trois mailles une à une comme à l’endroit ; les rendre et les tricoter ensemble à l’envers par leurs brins arrière. Deux mailles de moins.',
  },
  sk2p: {
    name: 'surjet double',
    how: 'Glisser une maille comme à l’endroit, tricoter les deux suivantes ensemble, rabattre la maille glissée. Deux mailles de moins ; elles penchent à gauche.',
  },
  s2kp: {
    name: 'surjet double centré',
    how: 'Glisser deux mailles à la fois comme pour les tricoter ensemble, tricoter la suivante, rabattre les deux. Deux mailles de moins ; celle du milieu reste droite par-dessus.',
  },
  s2pp: {
    name: 'surjet double centré à l’envers',
    how: 'Piquer par derrière dans la deuxième maille puis dans la première, par leurs brins arrière, et glisser les deux ; tricoter la suivante à l’envers, rabattre les deux. Deux mailles de moins ; de l’autre côté celle du milieu reste droite par-dessus.',
  },
  'sl1 k2 psso': {
    name: 'surjet par-dessus deux',
    how: 'Glisser une maille, en tricoter deux, rabattre la maille glissée par-dessus les deux. Une maille de moins.',
  },
  k4tog: {
    name: '4 mailles ensemble à l’endroit',
    how: 'Quatre boucles comme une seule. Trois mailles de moins.',
  },
  p4tog: {
    name: '4 mailles ensemble à l’envers',
    how: 'Quatre boucles comme une seule. Trois mailles de moins.',
  },
  k5tog: {
    name: '5 mailles ensemble à l’endroit',
    how: 'Cinq boucles comme une seule. Quatre mailles de moins.',
  },
  p5tog: {
    name: '5 mailles ensemble à l’envers',
    how: 'Cinq boucles comme une seule. Quatre mailles de moins.',
  },
  drop: { name: 'lâcher', how: 'Laisser la maille glisser de l’aiguille sans la tricoter.' },
  dec: { name: '1 diminution', how: 'De deux mailles en faire une ; deux ensemble suffisent.' },
  'dec 2': { name: '2 diminutions', how: 'De trois mailles en faire une, comme cela va le mieux ici.' },
  'dec 3': { name: '3 diminutions', how: 'De quatre mailles en faire une, comme cela va le mieux ici.' },
  'dec 4': { name: '4 diminutions', how: 'De cinq mailles en faire une, comme cela va le mieux ici.' },
  m1: {
    name: 'augmentation intercalaire',
    how: 'Relever le brin entre les aiguilles et le tricoter de façon qu’il se torde. Une maille de plus.',
  },
  m1l: {
    name: 'augmentation intercalaire à gauche',
    how: 'Relever le brin par devant avec l’aiguille gauche et tricoter son brin arrière à l’endroit. Une maille de plus.',
  },
  m1r: {
    name: 'augmentation intercalaire à droite',
    how: 'Relever le brin par derrière avec l’aiguille gauche et tricoter son brin avant à l’endroit. Une maille de plus.',
  },
  m1p: {
    name: 'augmentation intercalaire à l’envers',
    how: 'Relever le brin par devant et tricoter son brin arrière à l’envers. Une maille de plus.',
  },
  yo: {
    name: 'jeté',
    how: 'Avant la maille suivante, passer le fil par-dessus l’aiguille droite de l’avant vers l’arrière. Une maille de plus, avec un jour dessous.',
  },
  'yo twice': {
    name: 'double jeté',
    how: 'Passer le fil deux fois autour de l’aiguille droite. Deux mailles de plus, avec un grand jour.',
  },
  kfb: {
    name: 'augmentation barrée',
    how: 'Tricoter la maille à l’endroit et la garder sur l’aiguille gauche, tricoter encore son brin arrière à l’endroit, la lâcher. Une maille de plus, avec une petite barre.',
  },
  pfb: {
    name: 'augmentation barrée à l’envers',
    how: 'Tricoter la maille à l’envers et la garder sur l’aiguille gauche, tricoter encore son brin arrière à l’envers, la lâcher. Une maille de plus.',
  },
  kfbf: {
    name: 'trois dans une',
    how: 'Tricoter la maille devant, derrière et encore devant, puis la lâcher. Deux mailles de plus.',
  },
  'k1 p1': {
    name: 'endroit et envers dans une',
    how: 'Tricoter la maille à l’endroit, la garder, ramener le fil devant et la tricoter aussi à l’envers. Une maille de plus.',
  },
  'k1 p1 k1': {
    name: 'endroit, envers, endroit dans une',
    how: 'Tricoter la même maille à l’endroit, à l’envers et à l’endroit, puis la lâcher. Deux mailles de plus.',
  },
  'p1 k1 p1': {
    name: 'envers, endroit, envers dans une',
    how: 'Tricoter la même maille à l’envers, à l’endroit et à l’envers, puis la lâcher. Deux mailles de plus.',
  },
  'k1 p1 k1 p1': {
    name: 'quatre dans une',
    how: 'Tricoter la même maille à l’endroit, à l’envers, à l’endroit et à l’envers, puis la lâcher. Trois mailles de plus.',
  },
  'k1 p1 k1 p1 k1': {
    name: 'cinq dans une',
    how: 'Tricoter la même maille à l’endroit, à l’envers, à l’endroit, à l’envers et à l’endroit, puis la lâcher. Quatre mailles de plus.',
  },
  'k1 yo k1': {
    name: 'endroit, jeté, endroit dans une',
    how: 'Tricoter la maille à l’endroit, la garder, faire un jeté, la tricoter encore à l’endroit. Deux mailles de plus.',
  },
  'k1 yo k1 yo k1': {
    name: 'cinq dans une avec jetés',
    how: 'Trois fois à l’endroit dans la même maille, avec un jeté entre chaque, puis la lâcher. Quatre mailles de plus.',
  },
  inc: {
    name: '1 augmentation',
    how: 'Faire une maille de plus, comme cela va le mieux ici ; une augmentation barrée suffit.',
  },
  'inc 2': { name: '2 augmentations', how: incInto('trois') },
  'inc 3': { name: '3 augmentations', how: incInto('quatre') },
  'inc 4': { name: '4 augmentations', how: incInto('cinq') },
  bo: {
    name: 'rabattre',
    how: 'Tricoter deux mailles, passer la première par-dessus la seconde ; en tricoter une autre, repasser. Il faut une maille de plus que celles qui sont rabattues ; elle reste sur l’aiguille droite et compte comme la première des suivantes.',
  },
  co: {
    name: 'monter',
    how: 'Faire de nouvelles boucles sur l’aiguille en cours, en boucles simples ou tricotées l’une dans l’autre, au début ou à la fin du rang.',
  },
  pu: {
    name: 'relever et tricoter',
    how: 'Endroit face à soi : piquer dans le bord, tirer le fil, garder la boucle. Avancer régulièrement le long du bord.',
  },
  hold: {
    name: 'mettre en attente',
    how: 'Passer les mailles sur un fil ou un arrêt de mailles sans les tricoter ; elles y restent jusqu’à ce qu’on en ait besoin.',
  },
  take: {
    name: 'reprendre les mailles en attente',
    how: 'Remettre les mailles en attente sur une aiguille, aucune tournée, et rattacher le fil.',
  },
};

/** Quelle face du tricot est devant elle. */
export const sides: Readonly<Record<Side, Gloss>> = {
  RS: { name: 'endroit', how: 'La belle face, celle qu’on voit une fois porté, est face à vous.' },
  WS: { name: 'envers', how: 'La face intérieure, cachée une fois porté, est face à vous.' },
};

const sts = (n: number): string => (n === 1 ? '1 maille' : `${n} mailles`);

export function crossing(name: CableName, { leans, over, under, purled, open }: Crossing): Gloss {
  const called = `${over + under} mailles croisées à ${leans === 'left' ? 'gauche' : 'droite'}`;
  if (name === 'rt')
    return {
      name: called,
      how: 'Tricoter deux mailles ensemble à l’endroit mais les garder sur l’aiguille gauche ; tricoter encore la première à l’endroit ; lâcher les deux.',
    };
  if (name === 'lt')
    return {
      name: called,
      how: 'Par derrière, tricoter la deuxième maille à l’endroit par son brin arrière, la garder, tricoter la première ; lâcher les deux.',
    };
  const behind = purled ? 'à l’envers' : 'à l’endroit';
  const how =
    leans === 'left'
      ? `Mettre ${sts(over)} sur une aiguille à torsades devant l’ouvrage ; en tricoter ${under} ${behind} ; tricoter à l’endroit les ${over} de l’aiguille à torsades.`
      : `Mettre ${sts(under)} sur une aiguille à torsades derrière l’ouvrage ; en tricoter ${over} à l’endroit ; tricoter ${behind} les ${under} de l’aiguille à torsades.`;
  return {
    name: called,
    how: open
      ? `${how} Un nombre impair se partage de plus d’une façon ; voyez comment font vos explications.`
      : how,
  };
}
