import type { FabricName } from '../../fabric.ts';
import type { MeasuredGauge } from '../../measured-gauge.ts';
import { gaugeOf } from '../gauges.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../recipe.ts';
import type { PieceForm } from './form.ts';
import { mainFabric, ribNeedle, type StarterWish, shapedRows } from './starters.ts';
import { recipeToForm } from './write-piece.ts';

/**
 * A garment of straight panels, as a beginner knits it: no armholes, each shoulder bound off in one row, a boat neck or
 * a V, sleeves widened in one row above the cuff.
 */

/** Its figures: what each counts, and what it measures unless she says otherwise, mm; common practice, no published source. */
export const straightFigures = {
  width: { of: 'stitches', mm: 540 },
  length: { of: 'rows', mm: 580 },
  border: { of: 'rows', mm: 50 },
  neckWidth: { of: 'stitches', mm: 240 },
  neckDepth: { of: 'rows', mm: 180 },
  cuff: { of: 'stitches', mm: 240 },
  sleeveTop: { of: 'stitches', mm: 420 },
  sleeveLength: { of: 'rows', mm: 430 },
} as const;

export type StraightFigure = keyof typeof straightFigures;
export const straightFigureNames = Object.keys(straightFigures) as readonly StraightFigure[];

/** A figure as she gave it: a length, or a count, which then stands as it is; null while its field is empty. */
export type GivenFigure = { readonly mm: number | null } | { readonly count: number | null };

export interface StraightShape {
  readonly neck: 'boat' | 'V';
  readonly given: { readonly [Name in StraightFigure]?: GivenFigure };
}

export type StraightCounts = Readonly<Record<StraightFigure, number>>;

/** The usual size, nothing of it said by her yet. */
export const usualShape: StraightShape = { neck: 'boat', given: {} };

/**
 * Stitches and rows of the shape. What was given as a length comes in pairs, so that halves are whole and sections begin
 * on the right side; what was given as a count is not touched. Undefined while a figure is missing or is none.
 */
export function straightCounts(shape: StraightShape, gauge: MeasuredGauge): StraightCounts | undefined {
  const counts = straightFigureNames.map((name) => [name, countOf(shape, name, gauge)] as const);
  return counts.every(([name, count]) => isWhole(count) && (count > 0 || name === 'border'))
    ? (Object.fromEntries(counts) as Record<StraightFigure, number>)
    : undefined;
}

const isWhole = (count: number | undefined): count is number => Number.isSafeInteger(count);

function countOf(shape: StraightShape, name: StraightFigure, gauge: MeasuredGauge): number | undefined {
  const said = givenOf(shape, name);
  if ('count' in said) return said.count ?? undefined;
  if (said.mm === null) return undefined;
  const border = borderIn(shape, name, gauge);
  const above = ((said.mm - border.mm) * gauge[straightFigures[name].of]) / 100;
  return name === 'border' ? inPairs((said.mm * ribRows(gauge)) / 100) : inPairs(border.rows + above);
}

/** mm of a figure: as given, else of its count. */
export function straightMm(
  shape: StraightShape,
  name: StraightFigure,
  gauge: MeasuredGauge | undefined,
): number | undefined {
  const said = givenOf(shape, name);
  if ('mm' in said) return said.mm ?? undefined;
  if (said.count === null || gauge === undefined) return undefined;
  if (name === 'border') return (said.count / ribRows(gauge)) * 100;
  const border = borderIn(shape, name, gauge);
  return border.mm + ((said.count - border.rows) / gauge[straightFigures[name].of]) * 100;
}

const givenOf = ({ given }: StraightShape, name: StraightFigure): GivenFigure =>
  given[name] ?? { mm: straightFigures[name].mm };

const inPairs = (count: number): number => 2 * Math.round(count / 2);

/** Of the border, which is a rib and higher or lower by the row than the fabric above it. */
const ribRows = (gauge: MeasuredGauge): number => gaugeOf({ gauge }, 'rib 1x1').rows;

/** What of a figure is border: nothing, unless it is the length of a piece that begins with one. */
function borderIn(shape: StraightShape, name: StraightFigure, gauge: MeasuredGauge) {
  const rows = name === 'length' || name === 'sleeveLength' ? (countOf(shape, 'border', gauge) ?? 0) : 0;
  return { rows, mm: (rows / ribRows(gauge)) * 100 };
}

/** Why pieces cannot be made of these figures, by the figure to change; the sentences are made in src/words. */
export const straightFaults = [
  'odd V',
  'neck too wide',
  'too short',
  'neck too steep',
  'sleeve too wide',
] as const;
export type StraightFault = (typeof straightFaults)[number];

/** Rows that bind off the shoulders of a straight back. */
const SHOULDER_ROWS = 2;

export function faultOf({ neck }: StraightShape, c: StraightCounts): StraightFault | undefined {
  if (neck === 'V' && c.width % 2 === 1) return 'odd V';
  if (shoulderOf(c) < 2) return 'neck too wide';
  const deep = neck === 'V' ? c.neckDepth : 0;
  if (c.length - c.border - deep - SHOULDER_ROWS < 2 || c.sleeveLength - c.border < 2) return 'too short';
  if (neck === 'V' && c.width / 2 - shoulderOf(c) > c.neckDepth) return 'neck too steep';
  // a row can make one stitch between every two
  if (c.sleeveTop < c.cuff || c.sleeveTop > 2 * c.cuff - 1) return 'sleeve too wide';
  return undefined;
}

/** Stitches of each shoulder: both alike, so that a neck may take one stitch more than was said. */
export const shoulderOf = (c: StraightCounts): number => Math.floor((c.width - c.neckWidth) / 2);

export const neckOf = (c: StraightCounts): number => c.width - 2 * shoulderOf(c);

/** Back, front and sleeve of the shape; its figures have no fault. */
export function straightPieces(
  shape: StraightShape,
  c: StraightCounts,
  wish: StarterWish,
): readonly PieceForm[] {
  const pieces = [
    ['back', whole(wish.words.back, c, wish)],
    ['front', shape.neck === 'boat' ? whole(wish.words.front, c, wish) : vFront(c, wish)],
    ['sleeve', sleeve(c, wish)],
  ] as const;
  return pieces.map(([role, recipe]) => recipeToForm({ ...recipe, role, gauge: wish.gauge }));
}

const bordered = (stitches: number, rows: number, name: string, wish: StarterWish): readonly Section[] => {
  const fabric: FabricName = stitches % 2 === 0 ? 'rib 1x1' : 'rib 1x1 matched';
  return rows === 0 ? [] : [{ name, rows, fabric, needle: ribNeedle(wish.needle), shaping: [] }];
};

const plain = (name: string, rows: number, wish: StarterWish, shaping: readonly Shaping[] = []): Section => ({
  name,
  rows,
  fabric: mainFabric(wish.gauge),
  needle: wish.needle,
  shaping,
});

/** Straight up; both shoulders bound off at the beginning of a row each, the neck after them. */
function whole(name: string, c: StraightCounts, wish: StarterWish): Recipe {
  const { words } = wish;
  const off = (edge: 'right' | 'left', row: number): Shaping => ({
    kind: 'bind off',
    edge,
    groups: [{ row, stitches: shoulderOf(c) }],
  });
  // a group is bound off where its row begins: at the right edge on the right side, which odd rows are
  const rightFirst = c.length % 2 === 0;
  const sections = [
    ...bordered(c.width, c.border, words.rib, wish),
    plain(words.body, c.length - c.border - SHOULDER_ROWS, wish),
    plain(words.shoulders, SHOULDER_ROWS, wish, [
      off('right', rightFirst ? 1 : 2),
      off('left', rightFirst ? 2 : 1),
    ]),
  ];
  return { name, makes: 1, parts: [{ name, from: { castOn: c.width }, sections, end: 'bind off' }] };
}

/** Straight up to the V, then a side each, which ends where the shoulders of the back are bound off. */
function vFront(c: StraightCounts, wish: StarterWish): Recipe {
  const { words } = wish;
  const body: PartRecipe = {
    name: words.body,
    from: { castOn: c.width },
    sections: [
      ...bordered(c.width, c.border, words.rib, wish),
      plain(words.body, c.length - c.border - c.neckDepth - SHOULDER_ROWS, wish),
    ],
    end: 'split',
  };
  const side = (name: string, edge: 'right' | 'left'): PartRecipe => {
    const rows = shapedRows(c.neckDepth, c.width / 2 - shoulderOf(c), 1);
    const neck = edge === 'right' ? 'left' : 'right';
    const shaping: Shaping = { kind: 'edge', edge: neck, by: -1, rows, inset: 2, lean: 'mirrored' };
    return {
      name,
      from: { part: words.body, stitches: c.width / 2, edge },
      firstSide: 'RS',
      sections: [plain(words.neck, c.neckDepth, wish, rows.length > 0 ? [shaping] : [])],
      end: 'bind off',
    };
  };
  // as worn: with the right side facing, the left shoulder lies at the right edge
  const parts = [body, side(words.leftShoulder, 'right'), side(words.rightShoulder, 'left')];
  return { name: words.front, makes: 1, parts };
}

function sleeve(c: StraightCounts, wish: StarterWish): Recipe {
  const { words } = wish;
  const by = c.sleeveTop - c.cuff;
  const widening: readonly Shaping[] = by === 0 ? [] : [{ kind: 'across', row: 1, by }];
  const sections = [
    ...bordered(c.cuff, c.border, words.cuff, wish),
    plain(words.sleeve, c.sleeveLength - c.border, wish, widening),
  ];
  return {
    name: words.sleeve,
    makes: 2,
    parts: [{ name: words.sleeve, from: { castOn: c.cuff }, sections, end: 'bind off' }],
  };
}
