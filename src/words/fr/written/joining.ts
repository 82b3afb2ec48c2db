import type { Phrase } from '../../../knit/making-up/phrases.ts';
import type { BandEdge } from '../../../knit/making-up/step.ts';
import type { JoiningWords } from '../../../knit/written/written-words.ts';
import { nameIn } from '../../name-in.ts';
import { words as draft } from '../draft.ts';

const named = (name: string): string => nameIn(draft)(name).toLowerCase();

const units = { rows: 'rang', stitches: 'maille' } as const;
/** 0 and 1 are one in French. */
const counted = (count: number, unit: 'rows' | 'stitches'): string =>
  `${count} ${units[unit]}${count < 2 ? '' : 's'}`;

function edges({
  unit,
  both: { first, second, oneMoreEvery },
  isFarOff,
}: Pick<Extract<Phrase, { say: 'edges' }>, 'unit' | 'both' | 'isFarOff'>): string {
  const met = `${counted(first, unit)} sur ${counted(second, unit)}`;
  if (isFarOff) return `${met}\u00a0: cela ne correspond pas.`;
  const one = unit === 'rows' ? 'un' : 'une';
  return oneMoreEvery > 0
    ? `${met}\u00a0; en prendre ${one} de plus sur le bord le plus long après chaque série de ${oneMoreEvery}.`
    : `${met}.`;
}

const necks = { 'front neck': 'l’encolure devant', 'back neck': 'l’encolure dos' } as const;

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along === 'side of neck')
    return rows === undefined || ratio === undefined
      ? `Compter ${stitches} de chaque côté de l’encolure.`
      : `Compter ${stitches} de chaque côté de l’encolure, soit ${ratio.stitches} sur ${ratio.rows} de ses ${rows} rangs.`;
  return `Compter ${stitches} le long de ${necks[along]}, une pour chaque maille.`;
}

const ways = {
  mattress: 'Coudre au point de matelas.',
  'three-needle': 'Rabattre les deux bords ensemble avec une troisième aiguille, endroit contre endroit.',
  grafted: 'Remailler les deux bords ensemble.',
  sewn: 'Coudre bord à bord, à plat.',
} as const;

const sides = { left: 'gauche', right: 'droite' } as const;
const lines = {
  'left back': 'dos gauche',
  'right back': 'dos droit',
  'left front': 'devant gauche',
  'right front': 'devant droit',
} as const;

const raglans = {
  four: 'Les quatre lignes, du dessous de bras à l’encolure\u00a0:',
  three: 'Trois lignes, du dessous de bras à l’encolure\u00a0:',
  'one has an opening': 'Trois lignes, du dessous de bras à l’encolure\u00a0:',
  'of one sleeve': 'Les lignes de cette manche, du dessous de bras à l’encolure\u00a0:',
} as const;

/** The making up; the words are those of the screens, common practice, no published source. */
export const joining: JoiningWords = {
  title: {
    block: ({ piece, makes }) => `Bloquer (${named(piece)}${makes > 1 ? `, ${makes} fois` : ''})`,
    shoulders: ({ seams, side = 'right' }) =>
      seams > 1 ? 'Coudre les deux épaules' : `Coudre l’épaule ${sides[side]}`,
    'pick up': ({ band }) => `Tricoter comme indiqué plus haut (${named(band)})`,
    close: ({ seam }) =>
      seam &&
      (seam.of === 'raglan'
        ? `Coudre le raglan ${lines[seam.line]}`
        : `Coudre l’épaule ${sides[seam.line.startsWith('left') ? 'left' : 'right']}`),
    'neck edge': () => undefined,
    raglan: () => 'Coudre les raglans',
    'set in sleeves': () => 'Monter les manches',
    'side seams': () => 'Coudre les côtés',
    'sleeve seams': () => 'Coudre les manches',
    buttons: () => 'Coudre les boutons',
    opening: ({ of }) => (of === 'back' ? 'Finir l’ouverture du dos' : 'Finir l’ouverture du raglan'),
    lap: () => undefined,
    ends: () => undefined,
    join: ({ edges: [a, b] }) =>
      a && b ? `Joindre ${named(a.stretch.piece)} et ${named(b.stretch.piece)}` : 'Joindre à la main',
  },
  nos: (nos) => `, nº ${nos.join(', ')}`,
  colon: '\u00a0:',
  goesOn: (line) => line.charAt(0).toLowerCase() + line.slice(1),
  said: {
    'block to': ({ widthMm, heightMm }, length) =>
      `${length(widthMm)} de large, ${length(heightMm)} de haut.`,
    edges,
    way: ({ how }) => ways[how],
    'picked up': ({ total }) => `${total} mailles en tout.`,
    ratio: ({ ratio }) => `Le long des rangs, ${ratio.stitches} mailles pour ${ratio.rows} rangs.`,
    share: ({ percent }) => `Relever ${percent} mailles pour 100 que le bord peut recevoir.`,
    'a shoulder waits': ({ worn }) =>
      `L’épaule ${sides[worn]} reste ouverte jusqu’à ce que la bordure soit faite.`,
    'a line waits': ({ line }) =>
      `La ligne ${lines[line]} reste ouverte jusqu’à ce que la bordure soit faite.`,
    'first the open shoulder': () => [],
    'first the open line': () => [],
    'ends of the band': ({ band, rows }) =>
      `Coudre ensemble les extrémités (${named(band)})\u00a0: ${counted(rows, 'rows')} sur ${counted(rows, 'rows')}.`,
    neck: ({ edges: all, total }) => [
      ...all.map(neckEdge),
      `Compter environ ${total} mailles en tout pour une bordure.`,
    ],
    'raglan lines': ({ which }) => raglans[which],
    underarm: ({ underarm: { stitches, rows }, isOwn }) =>
      `Au dessous de bras, coudre ${stitches < 2 ? `la maille rabattue (${stitches})` : `les ${stitches} mailles rabattues`} ${isOwn ? 'à celles de la manche' : `aux ${rows} derniers rangs du côté de la manche`}.`,
    marker: ({ rows, mm }, length) =>
      `Marquer les bords de côté ${counted(rows, 'rows')} (${length(mm)}) sous la couture d’épaule, et monter entre les marqueurs.`,
    'middle of the top': 'Épingler le milieu du haut à la couture d’épaule.',
    quarters: ({ rows }) =>
      `Épingler les points de quart, comptés depuis le dessous de bras\u00a0: rangs ${rows.join(' / ')}.`,
    'top and armhole': ({ topMm, armholeMm, meet }, length) =>
      `Le bord de la manche mesure ${length(topMm)}, l’emmanchure ${length(armholeMm)}${meet ? '' : '\u00a0; soutenir le plus long régulièrement'}.`,
    loop: ({ rows, of }) =>
      `${counted(rows, 'rows')} de profondeur, ${of === 'back' ? 'un bouton d’un côté et une bride de l’autre' : 'un bouton au bord du dos et une bride à celui de la manche'}.`,
    lap: ({ of, rows, band = '' }) => {
      const high = counted(rows, 'rows');
      if (of === 'left shoulder')
        return `Poser l’épaule devant gauche avec sa bande, ${high}, sur celle du dos. Ne coudre les deux épaisseurs ensemble qu’à l’emmanchure.`;
      return of === 'both shoulders'
        ? `Poser le dos avec sa bande, ${high}, sur le devant, et la bande du devant sous le dos\u00a0: les bords des deux épaules se rejoignent. Ne coudre les épaisseurs ensemble qu’à chaque emmanchure\u00a0; la manche se coud à travers les deux, son emmanchure mesurée une fois, sur l’épaisseur du dessus.`
        : `Des deux bandes, poser celle-ci sur l’autre (${named(band)}), ${high} chacune. Coudre son extrémité inférieure aux mailles rabattues au-dessous, et celle de l’autre derrière.`;
    },
    'buttons below': ({ count }) =>
      `Coudre ${count} bouton${count < 2 ? '' : 's'} au dos, sous les boutonnières.`,
    holes: ({ band, stitches }) =>
      `Boutonnières (${named(band)})\u00a0: ${stitches.join(' / ')} mailles au-dessus de l’extrémité inférieure.`,
    'buttons opposite': ({ on }) =>
      `Coudre les boutons en face des boutonnières (${on === undefined ? 'l’autre bande' : named(on)}).`,
    joined: ({ unit, edges: [a, b], both, isFarOff }, length) =>
      unit === 'mm' ? `${length(a.mm)} sur ${length(b.mm)}.` : edges({ unit, both, isFarOff }),
    'one stitch in': 'Coudre à une maille entière de chaque bord.',
    'the left shoulder is buttoned': 'L’épaule gauche n’est pas cousue\u00a0: elle se boutonne.',
    'one shoulder waits': 'Laisser une épaule ouverte jusqu’à ce que la bordure soit faite.',
    'the left back line to its opening': 'Celle du dos gauche seulement jusqu’à son ouverture\u00a0:',
    'over the head': 'L’essayer d’abord par-dessus la tête.',
    'before the sleeves': 'L’essayer par-dessus la tête avant de coudre les manches.',
    'joined evenly': 'Soutenir le plus long régulièrement.',
    'an edge is gone': 'L’un des bords n’existe plus.',
    'along the seams': 'Rentrer les fils le long des coutures.',
  },
};
