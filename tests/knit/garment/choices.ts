import type { Design } from '../../../src/knit/garment/design.ts';
import type { Joint } from '../../../src/knit/making-up/joint.ts';
import { workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import { standing, troubleSaid, workedSaid } from '../making-up/by-hand.ts';
import { drafted, even, matchSaid, outlineSaid, recipeSaid, roundingSaid, tenth } from './spelled.ts';

const { neck, sleeve, hem, cuff, neckband, frontBand, armholeBand } = even;

const opened = (opening: NonNullable<Design['neck']['opening']>) => ({
  neck: { ...neck, opening, openingMm: 80 },
});
const shaped = (shape: Design['neck']['shape']) => ({ neck: { ...neck, shape } });
const slept = (more: Partial<Design['sleeve']>) => ({ sleeve: { ...sleeve, ...more } });

/** A plain design of each kind, and what is chosen otherwise in it: one thing at a time. */
export const choices: Readonly<
  Record<string, readonly [plain: Partial<Design>, other: Readonly<Record<string, Partial<Design>>>]>
> = {
  'a set-in pullover': [
    {},
    {
      'a stitch for each seam': { seamStitch: true },
      'an underarm of 40 mm': { underarmMm: 40 },
      'short rows, joined on three needles': { shoulder: 'short rows', shoulderEnd: 'three-needle' },
      'wrapped turns': { shoulder: 'short rows', turns: 'wrapped' },
      'straight shoulders': { shoulderDropMm: 0 },
      'a square neck': shaped('square'),
      'a boat neck': shaped('boat'),
      'a V, mitred on every row': { ...shaped('V'), neckband: { ...neckband, mitre: 'every row' } },
      'a neck of no depth behind': { neck: { ...neck, backDepthMm: 0 } },
      'a neck without a band': { neckband: { ...neckband, heightMm: 0 } },
      'a back that opens': opened('back'),
      'a buttoned shoulder': opened('left shoulder'),
      'an envelope neck': opened('envelope'),
      'a placket': opened('placket'),
      'a placket with its holes in the left': {
        ...opened('placket'),
        frontBand: { ...frontBand, holesIn: 'left front' },
      },
      'a neck that rests': { neck: { ...neck, middle: 'hold' } },
      'a straight sleeve': slept({ shape: 'straight' }),
      'a sleeve made wide after its cuff': slept({ shape: 'after cuff' }),
      'a sleeve from the top down': slept({ direction: 'top down' }),
      'a cap eased by ten, its top of 60 mm': slept({ capEase: 10, capTopMm: 60 }),
      'a sleeve that ends at the wrist': slept({ endsAtWrist: true }),
      'a hem of the body’s count': { hem: { ...hem, count: 'as body', heightMm: 60 } },
      'a hip wider than the chest': { silhouette: 'tapered' },
      'longer intervals together': { tapers: 'together', silhouette: 'waist' },
      'a cuff not swatched': { cuff: { ...cuff, fabric: 'garter' } },
    },
  ],
  'a raglan': [
    { armhole: 'raglan' },
    {
      'a stitch for each seam': { seamStitch: true },
      'an underarm of 40 mm': { underarmMm: 40 },
      'a seam that opens': opened('raglan seam'),
      'a seam that opens, from the top down': {
        ...opened('raglan seam'),
        ...slept({ direction: 'top down' }),
      },
      'a placket': opened('placket'),
      'a neck that rests': { neck: { ...neck, middle: 'hold' } },
      'a square neck': shaped('square'),
      'a neck of no depth': { neck: { ...neck, depthMm: 0 } },
      'a front that opens': { kind: 'cardigan' },
      'a front that opens, with a V': { kind: 'cardigan', neck: { ...neck, shape: 'V', depthMm: 160 } },
    },
  ],
  'a drop shoulder': [
    { armhole: 'drop', shoulderDropMm: 0 },
    {
      'a stitch for each seam': { seamStitch: true },
      'a slope': { shoulderDropMm: 24 },
      'no sleeves': { kind: 'vest', armholeBand: { ...armholeBand, percent: 80 } },
      'a front that opens': { kind: 'cardigan' },
      'a front that opens below a flat neck': {
        kind: 'cardigan',
        neck: { ...neck, depthMm: 0, backDepthMm: 0 },
      },
      'a back that opens': opened('back'),
    },
  ],
  'an indented armhole': [
    { armhole: 'indented' },
    {
      'a stitch for each seam': { seamStitch: true },
      'an underarm of 40 mm': { underarmMm: 40 },
      'a sleeve from the top down': slept({ direction: 'top down' }),
      'a front that opens': { kind: 'cardigan' },
      'an envelope neck': opened('envelope'),
    },
  ],
  'a cardigan': [
    { kind: 'cardigan' },
    {
      'a stitch for each seam': { seamStitch: true },
      'no front bands': { frontBand: { ...frontBand, heightMm: 0 } },
      'no buttons': { frontBand: { ...frontBand, buttons: 0 } },
      'large buttons at the left': { frontBand: { ...frontBand, buttonMm: 30, holesIn: 'left front' } },
      'no neckband': { neckband: { ...neckband, heightMm: 0 } },
      'a square neck': shaped('square'),
      'a V, its band not round it': { ...shaped('V'), frontBand: { ...frontBand, heightMm: 0 } },
      'a V with its holes in the left': {
        ...shaped('V'),
        frontBand: { ...frontBand, holesIn: 'left front' },
      },
      'short rows, grafted': { shoulder: 'short rows', shoulderEnd: 'grafted' },
      'no sleeves': { kind: 'buttoned vest' },
    },
  ],
};

/** The corners of a drawing at its beginning and its end; between them lie the steps of its curves. */
function endsSaid(points: Parameters<typeof outlineSaid>[0]): string {
  const corners = outlineSaid(points).split(' ');
  return corners.length > 12
    ? [...corners.slice(0, 6), '…', ...corners.slice(-5)].join(' ')
    : corners.join(' ');
}

const pointsSaid = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y]) => `${tenth(x)},${tenth(y)}`).join(' ');

/** How a seam is worked where it is not sewn as usual, what is eased in, what is left out of a pick-up. */
function wishSaid(joint: Joint): string {
  if (joint.kind === 'seam')
    return `${joint.how === 'mattress' ? '' : ` ${joint.how}`}${joint.ease ? ` ease ${joint.ease}` : ''}`;
  return joint.kind === 'pick up'
    ? joint.along.map(({ percent }) => (percent ? ` ${percent} %` : '')).join('')
    : '';
}

/** All that a draft says, a line each: pieces, joints as they are worked, figures, drawings. */
export function draftSaid(changes: Partial<Design>): readonly string[] {
  const made = drafted(changes);
  const { worked, troubles } = workJoints(made.joints, standing(...made.recipes));
  return [
    ...made.recipes.flatMap(recipeSaid),
    ...worked.map((one) => `${workedSaid(one)}${wishSaid(one.joint)}`),
    ...troubles.map(troubleSaid),
    ...made.roundings.map(roundingSaid),
    ...made.matches.map((one) => `seam ${matchSaid(one)}`),
    ...made.outlines.flatMap(({ piece, asked, made: drawn, openings = [] }) => [
      `${piece} asked: ${endsSaid(asked)}`,
      `${piece} drawn: ${endsSaid(drawn)}`,
      ...openings.map((line) => `${piece} opens: ${pointsSaid(line)}`),
    ]),
    ...made.warnings.map(({ code, figures }) => `warned: ${code} ${Object.values(figures).join(' ')}`),
    ...made.assumed.map(
      ({ fabric, gauge }) => `assumed: ${fabric} ${tenth(gauge.stitches)} ${tenth(gauge.rows)}`,
    ),
    ...(made.head ? [`neck ${tenth(made.head.neckMm)} opens ${tenth(made.head.opensMm)}`] : []),
  ];
}
