import { type FabricName, fits } from '../../fabric.ts';
import { factsOf } from '../../fabric-facts.ts';
import { fabricOfGauge, type MeasuredGauge } from '../../measured-gauge.ts';
import { taper } from '../../shape/taper.ts';
import type { PartRecipe, Recipe, Section, Shaping } from '../recipe.ts';
import type { PieceForm } from './form.ts';
import { type StarterSizes, starterSizes } from './starter-sizes.ts';
import { recipeToForm } from './write-piece.ts';

/** Ordinary pieces to begin from and type over: one V-neck pullover in pieces that agree with each other. */
export const starterNames = ['back', 'front', 'sleeve', 'neckband'] as const;
export type StarterName = (typeof starterNames)[number];

/** Names of pieces, parts, sections and edges, in the knitter's language. */
export interface StarterWords {
  readonly back: string;
  readonly front: string;
  readonly sleeve: string;
  readonly neckband: string;
  readonly leftShoulder: string;
  readonly rightShoulder: string;
  readonly rib: string;
  readonly body: string;
  readonly armholes: string;
  readonly neck: string;
  readonly shoulders: string;
  readonly cuff: string;
  readonly band: string;
  readonly leftNeck: string;
  readonly rightNeck: string;
  readonly point: string;
  readonly backNeck: string;
}

export interface StarterWish {
  readonly gauge: MeasuredGauge;
  /** needle of the main fabric, mm; ribs take one half a millimetre thinner */
  readonly needle: number;
  readonly words: StarterWords;
}

export function starter(name: StarterName, wish: StarterWish): PieceForm {
  const sizes = starterSizes(wish.gauge);
  const make = { back, front, sleeve, neckband }[name];
  return recipeToForm({ ...make(sizes, wish), role: name, gauge: wish.gauge });
}

const section = (
  name: string,
  rows: number,
  { gauge, needle }: StarterWish,
  shaping: readonly Shaping[] = [],
): Section => ({ name, rows, fabric: mainFabric(gauge), needle, shaping });

/** A rib that is the same at both ends asks for an odd count, which a body with a neck in its middle has not. */
export const mainFabric = (gauge: MeasuredGauge): FabricName => {
  const fabric = fabricOfGauge(gauge);
  return fits(fabric, 2).fits ? fabric : factsOf(fabric).cloth;
};

const ribbing = (name: string, rows: number, needle: number): Section => ({
  name,
  rows,
  fabric: 'rib 2x2',
  needle: ribNeedle(needle),
  shaping: [],
});

export const ribNeedle = (needle: number): number => Math.max(2, needle - 0.5);

function armhole(s: StarterSizes): readonly Shaping[] {
  const group = (edge: 'right' | 'left', row: number): Shaping => ({
    kind: 'bind off',
    edge,
    groups: [{ row, stitches: s.armholeGroup }],
  });
  const rows = Array.from({ length: s.armholeSingles }, (_, i) => 3 + 2 * i);
  const singles: Shaping = { kind: 'edge', edge: 'both', by: -1, rows, inset: 2, lean: 'mirrored' };
  return [group('right', 1), group('left', 2), ...(rows.length > 0 ? [singles] : [])];
}

/** A shoulder's stitches in equal steps, the larger ones first. */
function slope(s: StarterSizes, edge: 'right' | 'left', first: number, turns: number): Shaping {
  const sizes = Array.from({ length: s.steps }, (_, i) =>
    Math.floor((s.shoulder + s.steps - 1 - i) / s.steps),
  );
  const groups = sizes.slice(0, turns).map((stitches, i) => ({ row: first + 2 * i, stitches }));
  return { kind: 'bind off', edge, groups };
}

function lower(s: StarterSizes, wish: StarterWish): readonly Section[] {
  const { needle, words } = wish;
  return [ribbing(words.rib, s.ribRows, needle), section(words.body, s.bodyRows, wish)];
}

function back(s: StarterSizes, wish: StarterWish): Recipe {
  const { words } = wish;
  const shoulders = [slope(s, 'right', 1, s.steps), slope(s, 'left', 2, s.steps)];
  const sections = [
    ...lower(s, wish),
    section(words.armholes, s.armholeRows, wish, armhole(s)),
    section(words.shoulders, 2 * s.steps, wish, shoulders),
  ];
  return piece(words.back, [{ name: words.back, from: { castOn: s.width }, sections, end: 'hold' }]);
}

function front(s: StarterSizes, wish: StarterWish): Recipe {
  const { words } = wish;
  const body: PartRecipe = {
    name: words.body,
    from: { castOn: s.width },
    sections: [...lower(s, wish), section(words.armholes, s.shapedRows, wish, armhole(s))],
    end: 'split',
  };
  // as worn: with the right side facing, the left shoulder lies at the right edge
  return piece(words.front, [
    body,
    shoulder(s, wish, words.leftShoulder, 'right'),
    shoulder(s, wish, words.rightShoulder, 'left'),
  ]);
}

function shoulder(s: StarterSizes, wish: StarterWish, name: string, edge: 'right' | 'left'): PartRecipe {
  const { words } = wish;
  const rows = shapedRows(s.neckRows, s.backNeck / 2, 1);
  const neckEdge = edge === 'right' ? 'left' : 'right';
  // the last step is what the closing bind-off takes, so one turn less; the left edge needs a row more for its turn
  const turns = s.steps - 1;
  const [first, slopeRows] = edge === 'right' ? [1, 2 * turns] : [2, 2 * turns + 1];
  return {
    name,
    from: { part: words.body, stitches: s.top / 2, edge },
    firstSide: 'RS',
    sections: [
      section(words.neck, s.neckRows, wish, [
        { kind: 'edge', edge: neckEdge, by: -1, rows, inset: 2, lean: 'mirrored' },
      ]),
      section(words.shoulders, slopeRows, wish, [slope(s, edge, first, turns)]),
    ],
    end: 'bind off',
  };
}

function sleeve(s: StarterSizes, wish: StarterWish): Recipe {
  const { words, needle } = wish;
  const times = (s.sleeveTop - s.cuff) / 2;
  const rows = shapedRows(s.sleeveRows - 6, times, 5);
  const widening: Shaping = { kind: 'edge', edge: 'both', by: 1, rows, inset: 2, lean: 'mirrored' };
  const sections = [
    ribbing(words.cuff, s.ribRows, needle),
    section(words.sleeve, s.sleeveRows, wish, [widening]),
  ];
  return piece(
    words.sleeve,
    [{ name: words.sleeve, from: { castOn: s.cuff }, sections, end: 'bind off' }],
    2,
  );
}

/** Three stitches for four rows along each side of the V, one at its point, the back neck stitch for stitch. */
function neckband(s: StarterSizes, { words, needle }: StarterWish): Recipe {
  const side = Math.round((s.neckRows * 3) / 4);
  const rows = Array.from({ length: s.bandRows / 2 }, (_, i) => 2 * i + 2);
  const band: Section = {
    name: words.band,
    rows: s.bandRows,
    fabric: 'rib 1x1 matched',
    needle: ribNeedle(needle),
    shaping: [{ kind: 'middle', rows, from: side }],
  };
  const pickUp = [
    { along: words.leftNeck, stitches: side },
    { along: words.point, stitches: 1 },
    { along: words.rightNeck, stitches: side },
    { along: words.backNeck, stitches: s.backNeck },
  ];
  return piece(words.neckband, [
    { name: words.neckband, from: { pickUp }, firstSide: 'WS', sections: [band], end: 'bind off' },
  ]);
}

const piece = (name: string, parts: readonly PartRecipe[], makes = 1): Recipe => ({ name, makes, parts });

/** Spread over the rows, on RS rows where they have room; what does not fit at all is left out. */
export function shapedRows(rows: number, times: number, first: number): readonly number[] {
  for (const step of [2, 1] as const) {
    const found = taper({ rows, times, first, step });
    if (found.ok) return found.value.rows;
  }
  return Array.from({ length: Math.max(0, rows - first + 1) }, (_, i) => first + i);
}
