import type { Abbreviation } from '../../../knit/written/written-words.ts';

/** Of the lists that are named in row.ts, in our own words. */
export const abbreviations: readonly Abbreviation[] = [
  [
    '1 aug barrée',
    'augmentation barrée\u00a0: tricoter la même maille par devant, puis par derrière',
    /1 aug barrée(?! env)/,
  ],
  [
    '1 aug interc',
    'augmentation intercalaire\u00a0: relever le brin avant la maille suivante et le tricoter torse',
    /1 aug interc(?! [GD]| env)/,
  ],
  [
    '1 aug interc D',
    'augmentation penchée à droite\u00a0: relever le brin par derrière, le tricoter par devant',
  ],
  ['1 aug interc env', 'augmentation à l’envers\u00a0: relever le brin et le tricoter torse à l’envers'],
  [
    '1 aug interc G',
    'augmentation penchée à gauche\u00a0: relever le brin par devant, le tricoter par derrière',
  ],
  [
    '1 surj double',
    'surjet double\u00a0: glisser 1 maille, 2 mailles ensemble à l’endroit, rabattre la maille glissée',
    /1 surj double(?! centré)/,
  ],
  [
    '1 surj double centré',
    'glisser 2 mailles ensemble comme à l’endroit, 1 maille à l’endroit, rabattre les mailles glissées',
    /1 surj double centré(?! env)/,
  ],
  [
    '1 surj double centré env',
    'glisser 2 mailles ensemble par derrière, 1 maille à l’envers, rabattre les mailles glissées',
  ],
  [
    '2 m gliss ens end',
    'glisser 2 mailles une à une comme à l’endroit, les tricoter ensemble à l’endroit par derrière',
  ],
  [
    '2 m gliss ens env',
    'glisser 2 mailles une à une comme à l’endroit, les tricoter ensemble à l’envers par derrière',
  ],
  [
    '3 m gliss ens env',
    'glisser 3 mailles une à une comme à l’endroit, les tricoter ensemble à l’envers par derrière',
  ],
  ['att', 'attente'],
  ['dern', 'dernières mailles, dernière maille'],
  ['end', 'à l’endroit'],
  ['ens', 'ensemble'],
  ['env', 'à l’envers'],
  ['gliss', 'glisser'],
  ['jeté', 'passer le fil sur l’aiguille droite'],
  ['m', 'maille, mailles', /(?<!\p{L})m(?! double|\p{L})/u],
  [
    'm double',
    'maille double\u00a0: la maille du demi-tour, tirée pour que deux boucles soient sur l’aiguille',
  ],
  ['mm', 'millimètres'],
  ['rab', 'rabattre'],
  ['rg', 'rang, rangs'],
  ['torse', 'prise par derrière'],
];
