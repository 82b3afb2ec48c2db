import type { Draft } from '../../knit/garment/draft.ts';
import type { Measure, Rounding } from '../../knit/garment/roundings.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { saysLength } from '../../words/measures.ts';

/** A figure on a drawing; `upright`: read from below, along a height. */
export interface Label {
  /** its foot, mm: x from the piece's middle, y above its lower edge */
  readonly at: Point;
  readonly text: string;
  /** what was asked for, where whole stitches and rows make another figure */
  readonly asked?: string | undefined;
  readonly upright: boolean;
  /** the field of the design that it is typed in */
  readonly to: string;
}

/** mm; `letter` is the height of one. */
interface Drawn {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly length: number;
  readonly letter: number;
}

/** Every width and height that a knitter looks for on a piece, where it lies; what is too low for its figure has none. */
export function labelsOf(piece: string, draft: Draft, drawn: Drawn): readonly Label[] {
  const of: Of = (measure) => draft.roundings.find((rounding) => rounding.measure === measure);
  const list = piece === 'Sleeve' ? onSleeve(of, drawn) : onPanel(piece, of, drawn);
  const at: Point = [drawn.left - 0.4 * drawn.letter, drawn.top / 2];
  const to = piece === 'Sleeve' ? 'sleeve.lengthMm' : 'lengthMm';
  const asked = askedOf(of(piece === 'Sleeve' ? 'sleeve length' : 'length'));
  return [{ at, text: saysLength(drawn.length), asked, upright: true, to }, ...list];
}

type Of = (measure: Measure) => Rounding | undefined;

/** As it is read: what differs by less than the figure shows is the same. */
function askedOf(rounding: Rounding | undefined): string | undefined {
  if (rounding === undefined) return undefined;
  const asked = saysLength(rounding.askedMm);
  return asked === saysLength(rounding.madeMm) ? undefined : asked;
}

const level = (x: number, y: number, text: string, to: string): Label => ({
  at: [x, y],
  text,
  upright: false,
  to,
});
const across = (x: number, y: number, mm: number, to: string): Label =>
  level(x, y, `↔ ${saysLength(mm)}`, to);

function onPanel(piece: string, of: Of, { left, right, top, letter }: Drawn): Label[] {
  const middle = (left + right) / 2;
  const depth = (of('armhole depth') ?? of('raglan depth'))?.madeMm ?? 0;
  const shoulder = top - (of('shoulder drop')?.madeMm ?? 0);
  const underarm = shoulder - depth;
  const hem = of('hem height')?.madeMm ?? 0;
  const isBack = piece === 'Back';
  const labels: Label[] = [];
  const put = (made: Rounding | undefined, label: (mm: number) => Label) => {
    if (made) labels.push({ ...label(made.madeMm), asked: askedOf(made) });
  };
  if (isBack)
    put(of('neck width'), (mm) => level(middle, top + 0.35 * letter, saysLength(mm), 'neck.widthMm'));
  if (isBack)
    put(of('width across the shoulders'), (mm) =>
      across(middle, (shoulder + underarm) / 2 - letter / 3, mm, 'ease.crossBack'),
    );
  const body = isBack ? of('width at the underarm') : of('front width at the underarm');
  put(body, (mm) => across(middle, underarm - 1.4 * letter, mm, 'ease.chest'));
  if (isBack)
    put(of('width at the waist'), (mm) => across(middle, (underarm + hem) / 2 - letter, mm, 'ease.waist'));
  if (isBack) put(of('width above the hem'), (mm) => across(middle, hem + letter / 2, mm, 'ease.hip'));
  if (!isBack && middle < letter && middle > -letter)
    put(of('neck depth'), (mm) =>
      level(middle, top - mm - 1.1 * letter, `↕ ${saysLength(mm)}`, 'neck.depthMm'),
    );
  const heights: readonly Height[] = [
    [0, hem, 'hem.heightMm'],
    [hem, underarm, 'lengthMm'],
    [underarm, shoulder, 'ease.armholeDepth'],
  ];
  return [...labels, ...besides(heights, right, letter)];
}

function onSleeve(of: Of, { left, right, letter }: Drawn): Label[] {
  const middle = (left + right) / 2;
  const labels: Label[] = [];
  const cuff = of('cuff height')?.madeMm ?? 0;
  const length = of('sleeve length')?.madeMm ?? 0;
  const [low, wide] = [of('cuff width'), of('sleeve width')];
  if (low)
    labels.push({
      ...level(middle, -0.85 * letter, saysLength(low.madeMm), 'ease.wrist'),
      asked: askedOf(low),
    });
  if (wide)
    labels.push({
      ...across(middle, length - 1.2 * letter, wide.madeMm, 'ease.upperArm'),
      asked: askedOf(wide),
    });
  const heights: readonly Height[] = [
    [0, cuff, 'cuff.heightMm'],
    [cuff, length, 'sleeve.lengthMm'],
  ];
  return [...labels, ...besides(heights, right, letter)];
}

type Height = readonly [from: number, to: number, field: string];

/** Heights up the right-hand side, where there is room for a figure. */
const besides = (heights: readonly Height[], right: number, letter: number): Label[] =>
  heights.flatMap(([from, to, field]) =>
    to - from < 2.5 * letter
      ? []
      : [
          {
            at: [right + 1.1 * letter, (from + to) / 2] as const,
            text: saysLength(to - from),
            upright: true,
            to: field,
          },
        ],
  );
