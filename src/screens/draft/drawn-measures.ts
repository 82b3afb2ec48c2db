import type { Draft } from '../../knit/garment/draft.ts';
import type { Measure } from '../../knit/garment/roundings.ts';
import type { Point } from '../../knit/shape/curve.ts';
import { saysLength } from '../../words/measures.ts';

/** A figure on a drawing; `upright`: read from below, along a height. */
export interface Label {
  /** its foot, mm: x from the piece's middle, y above its lower edge */
  readonly at: Point;
  readonly text: string;
  readonly upright: boolean;
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
  const of = (measure: Measure): number | undefined =>
    draft.roundings.find((rounding) => rounding.measure === measure)?.madeMm;
  const list = piece === 'Sleeve' ? onSleeve(of, drawn) : onPanel(piece, of, drawn);
  const at: Point = [drawn.left - 0.4 * drawn.letter, drawn.top / 2];
  return [{ at, text: saysLength(drawn.length), upright: true }, ...list];
}

type Of = (measure: Measure) => number | undefined;

const level = (x: number, y: number, text: string): Label => ({ at: [x, y], text, upright: false });
const across = (x: number, y: number, mm: number): Label => level(x, y, `↔ ${saysLength(mm)}`);

function onPanel(piece: string, of: Of, { left, right, top, letter }: Drawn): Label[] {
  const middle = (left + right) / 2;
  const depth = of('armhole depth') ?? of('raglan depth') ?? 0;
  const shoulder = top - (of('shoulder drop') ?? 0);
  const underarm = shoulder - depth;
  const hem = of('hem height') ?? 0;
  const isBack = piece === 'Back';
  const labels: Label[] = [];
  const put = (mm: number | undefined, label: (mm: number) => Label) => {
    if (mm !== undefined) labels.push(label(mm));
  };
  if (isBack) put(of('neck width'), (mm) => level(middle, top + 0.35 * letter, saysLength(mm)));
  if (isBack)
    put(of('width across the shoulders'), (mm) => across(middle, (shoulder + underarm) / 2 - letter / 3, mm));
  const body = isBack ? of('width at the underarm') : of('front width at the underarm');
  put(body, (mm) => across(middle, underarm - 1.4 * letter, mm));
  if (isBack) put(of('width at the waist'), (mm) => across(middle, (underarm + hem) / 2 - letter, mm));
  if (isBack) put(of('width above the hem'), (mm) => across(middle, hem + letter / 2, mm));
  if (!isBack && middle < letter && middle > -letter)
    put(of('neck depth'), (mm) => level(middle, top - mm - 1.1 * letter, `↕ ${saysLength(mm)}`));
  const heights: readonly (readonly [number, number])[] = [
    [0, hem],
    [hem, underarm],
    [underarm, shoulder],
  ];
  return [...labels, ...besides(heights, right, letter)];
}

function onSleeve(of: Of, { left, right, letter }: Drawn): Label[] {
  const middle = (left + right) / 2;
  const labels: Label[] = [];
  const cuff = of('cuff height') ?? 0;
  const length = of('sleeve length') ?? 0;
  const [low, wide] = [of('cuff width'), of('sleeve width')];
  if (low !== undefined) labels.push(level(middle, -letter, saysLength(low)));
  if (wide !== undefined) labels.push(across(middle, length - 1.2 * letter, wide));
  const heights: readonly (readonly [number, number])[] = [
    [0, cuff],
    [cuff, length],
  ];
  return [...labels, ...besides(heights, right, letter)];
}

/** Heights up the right-hand side, where there is room for a figure. */
const besides = (
  heights: readonly (readonly [from: number, to: number])[],
  right: number,
  letter: number,
): Label[] =>
  heights.flatMap(([from, to]) =>
    to - from < 2.5 * letter
      ? []
      : [
          {
            at: [right + 1.1 * letter, (from + to) / 2] as const,
            text: saysLength(to - from),
            upright: true,
          },
        ],
  );
