import type { Design } from '../../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../../src/knit/garment/draft.ts';
import type { Rounding } from '../../../src/knit/garment/roundings.ts';
import type { Match } from '../../../src/knit/piece/match.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import type { Point } from '../../../src/knit/shape/curve.ts';
import { told } from '../../told.ts';

/**
 * A design in whole figures: a stitch is 5 mm wide and a row 4 mm high, in rib 4 mm by 4 mm. 400 mm at the underarm are
 * 80 stitches, 340 mm across 68, a neck of 160 mm 32; an armhole of 200 mm is 50 rows, a neck of 80 mm 20, a slope of
 * 24 mm 6; the sleeve is 300 mm wide, 60 stitches, and 200 mm, 40 stitches, above its cuff.
 */
export const even: Design = {
  kind: 'pullover',
  armhole: 'set-in',
  body: {
    chest: 760,
    waist: 640,
    hip: 840,
    crossBack: 330,
    napeToWrist: 700,
    napeToWaist: 400,
    arm: 420,
    upperArm: 280,
    wrist: 160,
    armholeDepth: 180,
    head: 560,
  },
  ease: { chest: 40, waist: 0, hip: 40, upperArm: 20, wrist: 40, crossBack: 10, armholeDepth: 20 },
  lengthMm: 560,
  silhouette: 'straight',
  neck: { shape: 'round', widthMm: 160, depthMm: 80, backDepthMm: 24 },
  shoulderDropMm: 24,
  sleeve: { shape: 'tapered', direction: 'cuff up', capEase: 0 },
  hem: { fabric: 'rib 2x2', heightMm: 40, count: 'fitted' },
  cuff: { fabric: 'rib 2x2', heightMm: 40 },
  neckband: { fabric: 'rib 2x2', heightMm: 24, mitre: 'every second row' },
  frontBand: { fabric: 'rib 1x1 matched', heightMm: 20, buttons: 4 },
  armholeBand: { fabric: 'rib 2x2', heightMm: 16 },
  fabric: 'stocking',
  gauges: {
    stocking: { stitches: 20, rows: 25 },
    'rib 2x2': { stitches: 25, rows: 25 },
    'rib 1x1 matched': { stitches: 25, rows: 25 },
  },
  needles: { panels: 4, borders: 3 },
  tapers: 'blended',
  overruled: [],
};

export function drafted(changes: Partial<Design>): Draft {
  const made = draft({ ...even, ...changes });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

const sides = { right: 'R', left: 'L', both: 'RL', across: '', middle: 'middle' } as const;
const groupsSaid = (groups: readonly { readonly row: number; readonly stitches: number }[]): string =>
  groups.map(({ row, stitches }) => `${row}:${stitches}`).join(' ');

/** Rows in an even rhythm are gathered: '3-11/2' is 3, 5, 7, 9, 11. */
export function rowsSaid(rows: readonly number[]): string {
  const said: string[] = [];
  for (let i = 0; i < rows.length; ) {
    const [first = 0, second] = rows.slice(i);
    const step = (second ?? 0) - first;
    let to = i + 1;
    while (rows[to] !== undefined && (rows[to] ?? 0) - (rows[to - 1] ?? 0) === step) to += 1;
    const isRun = to - i > 2;
    said.push(isRun ? `${first}-${rows[to - 1]}/${step}` : String(first));
    i = isRun ? to : i + 1;
  }
  return said.join(',');
}

function shapingSaid(shaping: Shaping): string {
  switch (shaping.kind) {
    case 'edge':
      return `${sides[shaping.edge]}${shaping.by > 0 ? '+' : ''}${shaping.by} in ${rowsSaid(shaping.rows)}${shaping.lean === 'plain' ? ' plain' : ''} inset ${shaping.inset}`;
    case 'across':
      return `${shaping.by > 0 ? '+' : ''}${shaping.by} across ${shaping.row}`;
    case 'middle':
      return `mitre at ${shaping.from} in ${rowsSaid(shaping.rows)}`;
    default:
      return `${shaping.kind} ${sides[shaping.edge]} ${groupsSaid(shaping.groups)}`;
  }
}

const sectionSaid = ({ name, rows, fabric, needle, shaping, words }: Section): string =>
  [`${name} ${rows} ${fabric} ${needle}`, ...shaping.map(shapingSaid), ...(words ? ['in words'] : [])].join(
    ', ',
  );

function partSaid({ name, from, firstSide, sections, end }: PartRecipe): string {
  const begun =
    'castOn' in from
      ? `${from.castOn}`
      : 'part' in from
        ? `${from.stitches} of ${from.part} ${from.edge}`
        : from.pickUp.map(({ along, stitches }) => `${stitches} ${along}`).join(' + ');
  return `${name}${firstSide ? ` ${firstSide}` : ''} = ${[begun, ...sections.map(sectionSaid), end].join('; ')}`;
}

/** A recipe part by part, in one line each. */
export const recipeSaid = ({ name, role, makes, mirrored, parts }: Recipe): readonly string[] => [
  `${name}: ${role}, ${makes}${mirrored ? ' mirrored' : ''}`,
  ...parts.map(partSaid),
];

/** A figure asked for, with what whole stitches and rows make of it. */
export const roundingSaid = ({ piece, measure, askedMm, madeMm, count, unit, unitMm }: Rounding): string =>
  `${piece} ${measure}: ${askedMm} asked, ${count} ${unit} of ${unitMm} make ${madeMm}`;

export const tenth = (mm: number): number => Math.round(mm * 10) / 10;

export const matchSaid = ({
  seam,
  unit,
  first,
  second,
  ease,
  tolerance,
  difference,
  agrees,
}: Match): string =>
  `${seam}: ${first.piece} ${tenth(first.measure)}, ${second.piece} ${tenth(second.measure)} ${unit}${ease ? ` ease ${ease}` : ''}, ${tenth(difference)} off of ${tenth(tolerance)}${agrees ? '' : ' does not agree'}`;

/** Corners of an outline, mm; of a symmetrical one its right-hand half. */
export function outlineSaid(points: readonly Point[]): string {
  const isWhole = points.some(([x]) => x < 0);
  const half = isWhole ? points.slice(0, points.length / 2) : points;
  return half.map(([x, y]) => `${tenth(x)},${tenth(y)}`).join(' ');
}
