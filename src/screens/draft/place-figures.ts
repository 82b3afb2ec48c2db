import type { Draft } from '../../knit/garment/draft.ts';
import type { Measure, Rounding } from '../../knit/garment/roundings.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { lengthToType, saysLength, saysTyped } from '../../words/measures.ts';
import { type DrawnGarment, type EdgeName, garmentDrawn, madeMm } from './garment-drawn.ts';

/** A figure on the drawing, to be touched; px, its middle and the least room that a finger needs. */
export interface Figure {
  /** the field of the design that it is typed in */
  readonly to: string;
  readonly measure: Measure;
  readonly made: string;
  /** what was asked for, where whole stitches and rows make another figure */
  readonly asked: string | undefined;
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
}

export interface Drawing {
  readonly garment: DrawnGarment;
  readonly width: number;
  readonly height: number;
  /** mm of the garment to px of the drawing */
  readonly put: (point: Point) => Point;
  readonly figures: readonly Figure[];
  /** px of the root's letters that its figures are set by: her own, or less where a column is narrow for them */
  readonly letters: number;
}

/** px that a finger needs (WCAG 2.2, success criterion 2.5.5) */
const TOUCH_PX = 44;
/** of a line of small letters, in the root's size: its height, and the width of one letter at the most */
const LINE = 1.15 * 0.9375;
/** the same where letters are set apart: lines are then too (WCAG 2.2, success criterion 1.4.12) */
const WIDE_LINE = 1.5 * 0.9375;
const LETTER = 0.6 * 0.9375;
/** in the root's size: as high as a drawing is at the most */
const HIGHEST = 17;
const GAP_PX = 22;

interface Room {
  /** px of the drawing, and of the root's letters */
  readonly width: number;
  readonly em: number;
  /** px that the garment may be high, where the screen has more room than a phone's */
  readonly tall?: number;
  /** px that the whole drawing may be high at the most: on its side a phone has little */
  readonly low?: number | undefined;
  /** px between letters, where a reader has them set wide */
  readonly apart?: number;
}

/** The width round the chest. */
const CHEST = 'ease.chest';

/** Letters that large ones give way to where else a figure would be missing: shares of them, and px that none is below. */
const SMALLER = [0.9, 0.8, 0.75];
const PLAIN_PX = 16;
/** px of a garment on the lowest screen */
const LEAST_PX = 128;

/**
 * Lays the garment and its figures into a column. A figure that has no room without another losing its own, or an edge
 * being hidden that it is not the measure of, stands in the form alone.
 */
export function drawingOf(draft: Draft, room: Room): Drawing {
  const smaller = SMALLER.map((share) => Math.max(PLAIN_PX, share * room.em));
  const sizes = [room.em, ...smaller.filter((one) => one < room.em)];
  // the width is what she decides first: where it has no room behind others they come behind it
  const laid = [false, true].flatMap((isFirst) => sizes.map((size) => laidBy(size, draft, room, isFirst)));
  return laid.reduce((best, one) => (tells(one) > tells(best) ? one : best));
}

/** How much a drawing tells: the width round the chest more than all else. */
const tells = ({ figures }: Drawing): number =>
  figures.length + (figures.some(({ to }) => to === CHEST) ? 100 : 0);

function laidBy(letters: number, draft: Draft, room: Room, isChestFirst: boolean): Drawing {
  const { width, em, tall = 0, low, apart = 0 } = room;
  const bare = garmentDrawn(draft, 0);
  const seen = figuresOf(draft);
  const sized = new Map(seen.map((one) => [one.to, { ...one, ...sizeOf(one, letters, apart) }]));
  const besides = (to: string) => (sized.get(to)?.wide ?? 0) / 2;
  const [left, right] = [besides('lengthMm'), bare.sleeve ? besides('sleeve.lengthMm') : TOUCH_PX / 2];
  const above = (sized.get('neck.widthMm')?.high ?? TOUCH_PX) + 2;
  const below = Math.max(TOUCH_PX / 2, (sized.get('ease.wrist')?.high ?? 0) / 2);
  const gap = bare.sleeve ? GAP_PX : 0;
  const highest = low === undefined ? HIGHEST * em : Math.max(LEAST_PX, low - above - below);
  const scale = Math.max(
    0.01,
    Math.min((width - left - right - gap) / bare.width, Math.max(highest, tall) / bare.height),
  );
  const garment = garmentDrawn(draft, gap / scale);
  const x0 = left + (width - left - right - garment.width * scale) / 2;
  const put = ([x, y]: Point): Point => [x0 + x * scale, above + y * scale];
  const high = above + garment.height * scale + below;
  const drawn = garment.edges.map(({ name, line }) => ({ name, line: line.map(put) }));
  const figures: Figure[] = [];
  const places = placesOf(draft, garment, put);
  const inTurn = isChestFirst ? [...places].sort((a, b) => rank(a[0]) - rank(b[0])) : places;
  for (const [to, at] of inTurn) {
    const one = sized.get(to);
    if (!one) continue;
    const spot = at(one).find(([x, y]) => {
      const own = { ...one, x, y };
      return (
        isIn(own, width, high) &&
        !figures.some((other) => overlap(own, other)) &&
        !drawn.some(({ name, line }) => !fields[to]?.on?.includes(name) && hides(own, line))
      );
    });
    if (spot) figures.push({ ...one, x: spot[0], y: spot[1] });
  }
  return { garment, width, height: high, put, figures, letters };
}

const rank = (to: string): number => (to === CHEST ? 0 : 1);

/** px: the room of a finger, and what is read within it */
type Sized = Pick<Figure, 'wide' | 'high'> & { readonly seenWide: number; readonly seenHigh: number };

type Boxed = Pick<Figure, 'x' | 'y' | 'wide' | 'high'>;

const isIn = ({ x, y, wide, high }: Boxed, width: number, height: number): boolean =>
  x - wide / 2 >= -1 && x + wide / 2 <= width + 1 && y - high / 2 >= -1 && y + high / 2 <= height + 1;

const overlap = (a: Boxed, b: Boxed): boolean =>
  Math.abs(a.x - b.x) < (a.wide + b.wide) / 2 && Math.abs(a.y - b.y) < (a.high + b.high) / 2;

/** px of an edge that a figure may lie over */
const HIDDEN_PX = 10;

/** Whether what is read of a figure lies over more of a line than can be spared. */
function hides(
  { x, y, seenWide, seenHigh }: Sized & Pick<Figure, 'x' | 'y'>,
  line: readonly Point[],
): boolean {
  let hidden = 0;
  line.forEach(([x1, y1], i) => {
    const [x0, y0] = line[i - 1] ?? [x1, y1];
    const steps = Math.ceil(Math.hypot(x1 - x0, y1 - y0));
    for (let step = 0.5; step < steps; step += 1) {
      const share = step / steps;
      const isUnder =
        Math.abs(x0 + (x1 - x0) * share - x) < seenWide / 2 &&
        Math.abs(y0 + (y1 - y0) * share - y) < seenHigh / 2;
      if (isUnder) hidden += 1;
    }
  });
  return hidden > HIDDEN_PX;
}

function sizeOf({ made, asked }: Pick<Figure, 'made' | 'asked'>, em: number, apart: number): Sized {
  const letters = Math.max(made.length, asked?.length ?? 0);
  const seenWide = letters * (LETTER * em + apart) + 0.5 * em;
  const seenHigh = (asked ? 2 : 1) * (apart > 0 ? WIDE_LINE : LINE) * em + 0.5 * em;
  return { seenWide, seenHigh, wide: Math.max(TOUCH_PX, seenWide), high: Math.max(TOUCH_PX, seenHigh) };
}

/** Every width and height that a knitter looks for, with the field that changes it. */
function figuresOf(draft: Draft): readonly Pick<Figure, 'to' | 'measure' | 'made' | 'asked'>[] {
  const has = (measure: Measure): Rounding | undefined =>
    draft.roundings.find((rounding) => rounding.measure === measure);
  return Object.entries(fields).flatMap(([to, { of, sign = '' }]) => {
    const found = of.map(has).find((one) => one !== undefined);
    if (!found) return [];
    const made = saysLength(found.madeMm);
    // what differs by less than the figure shows is the same; what differs is said as in the table and in its field, its unit once
    const isAsMade = saysLength(found.askedMm) === made;
    return [
      {
        to,
        measure: found.measure,
        made: `${sign}${made}`,
        asked: isAsMade ? undefined : `(${saysTyped(lengthToType(found.askedMm))})`,
      },
    ];
  });
}

interface Field {
  readonly of: readonly Measure[];
  readonly sign?: string;
  /** edges that it is the measure of: it may lie on them */
  readonly on?: readonly EdgeName[];
}

const fields: Readonly<Record<string, Field>> = {
  lengthMm: { of: ['length'], on: ['side'] },
  [CHEST]: { of: ['width at the underarm'], sign: '↔ ', on: ['side'] },
  'neck.widthMm': { of: ['neck width'], on: ['neck'] },
  'sleeve.lengthMm': { of: ['sleeve length'], on: ['sleeve'] },
  'neck.depthMm': { of: ['neck depth'], sign: '↕ ', on: ['neck', 'band'] },
  'ease.upperArm': { of: ['sleeve width'], sign: '↔ ' },
  'ease.armholeDepth': { of: ['armhole depth', 'raglan depth'], on: ['armhole'] },
  'ease.wrist': { of: ['cuff width'], on: ['sleeve'] },
  'ease.crossBack': { of: ['width across the shoulders'], sign: '↔ ' },
  'ease.waist': { of: ['width at the waist'], sign: '↔ ' },
  'ease.hip': { of: ['width above the hem'], sign: '↔ ' },
};

/** Up a side: its middle, else above or below it. */
const along = (x: number, top: number, foot: number): Point[] =>
  [0.5, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2].map((share): Point => [x, top + share * (foot - top)]);

type Places = readonly (readonly [to: string, at: (own: Sized) => readonly Point[]])[];

/** Where each figure lies, px, the most wanted first; between two of them an edge keeps the room of a finger. */
function placesOf(draft: Draft, garment: DrawnGarment, put: (point: Point) => Point): Places {
  const { middle, bodyWidth, sleeve, underarmY, shoulderY, height } = garment;
  const [x, top] = put([middle, 0]);
  const [left] = put([0, 0]);
  const [right, foot] = put([bodyWidth, height]);
  const [, underarm] = put([0, underarmY]);
  const [, shoulder] = put([0, shoulderY]);
  const [, neck] = put([0, madeMm(draft, 'neck depth')]);
  const [, hem] = put([0, height - madeMm(draft, 'hem height')]);
  const [armLeft] = put([sleeve?.left ?? 0, 0]);
  const [armRight] = put([sleeve?.right ?? 0, 0]);
  const [, armTop] = put([0, height - madeMm(draft, 'sleeve length')]);
  const arm = (armLeft + armRight) / 2;
  const [acrossRight] = put([middle + madeMm(draft, 'width across the shoulders') / 2, 0]);
  const [neckRight] = put([middle + madeMm(draft, 'neck width') / 2, 0]);
  const [acrossLeft] = put([middle - madeMm(draft, 'width across the shoulders') / 2, 0]);
  // along the middle of a cardigan lie its bands, which are touched themselves
  const isOpen = garment.edges.some(({ name }) => name === 'band');
  const aside = isOpen
    ? [right, right - 12, right - 24, (x + right) / 2]
    : [x, x + 8, x + 16, x + 24, right, right + 12];
  const down = (from: number): Point[] =>
    [0, 1, 2, 3, 4, 5, 6].flatMap((n) => aside.map((x1): Point => [x1, from + 12 * n]));
  // a deep neck has room for its figure, else it lies below
  const inNeck = neck - top > 1.5 * TOUCH_PX;
  return [
    ['lengthMm', () => along(left, underarm, foot)],
    ['neck.widthMm', ({ high }) => [[x, top - high / 2 - 1]]],
    [
      'neck.depthMm',
      ({ high }) => [[x, inNeck ? top + high / 2 + 2 : Math.max(neck + 8, top + TOUCH_PX) + high / 2]],
    ],
    ['ease.upperArm', ({ high }) => [[arm, armTop + high / 2]]],
    [CHEST, ({ high }) => down(underarm + high / 2).filter(([, y]) => y + high / 2 < foot - TOUCH_PX / 2)],
    ['sleeve.lengthMm', () => along(armRight, armTop, foot)],
    ['ease.wrist', () => [[arm, foot]]],
    // beside the armhole where the sleeve leaves room, else within the body, off the neck
    [
      'ease.armholeDepth',
      ({ wide, high }) =>
        [right + wide / 2, acrossRight - wide / 2 - 4]
          .map((x1): Point => [x1, (shoulder + underarm) / 2])
          .filter(([x1, y]) => x1 - wide / 2 > neckRight || y - high / 2 > neck),
    ],
    ['ease.crossBack', ({ wide, high }) => [[Math.max(acrossLeft - wide / 4, wide / 2), top - high / 2 - 1]]],
    ['ease.waist', () => (isOpen ? [] : [[x, (underarm + hem) / 2]])],
    ['ease.hip', ({ high }) => (isOpen ? [] : [[x, Math.min(hem, foot - TOUCH_PX / 2) - high / 2]])],
  ];
}
