/**
 * The number in what was typed, with comma or point as decimal mark, 4¼ also as 4 1/4 or 4-1/4;
 * undefined where it is none. A sign is taken only where `signed`.
 */
export function readNumber(text: string, signed = false): number | undefined {
  const plain = text
    .trim()
    .replace(/[\u2212\u2013]/g, '-')
    .replace(',', '.')
    .replace(/[¼½¾⅛⅜⅝⅞]$/, (part) => ` ${parts[part]}`)
    .replace(
      /^(-?)(?:(\d+)[\s-]+|\s*)(\d+)[/⁄](\d+)$/,
      (_, sign: string, whole = '0', over: string, under: string) =>
        `${sign}${Number(whole) + Number(over) / Number(under)}`,
    );
  const shape = signed ? /^-?(\d+\.?\d*|\.\d+)$/ : /^(\d+\.?\d*|\.\d+)$/;
  return shape.test(plain) ? Number(plain) : undefined;
}

const parts: Readonly<Record<string, string>> = {
  '⅛': '1/8',
  '¼': '1/4',
  '⅜': '3/8',
  '½': '1/2',
  '⅝': '5/8',
  '¾': '3/4',
  '⅞': '7/8',
};

export interface Bounds {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly step?: number | undefined;
}

/** A number, and one within the bounds. */
export const isWithin = (value: number | undefined, { min = -Infinity, max = Infinity }: Bounds): boolean =>
  value !== undefined && value >= min && value <= max;

/** One step up or down, kept within the bounds; from nothing it begins at the lower bound or 0. */
export function stepped(
  value: number | undefined,
  direction: 1 | -1,
  { min, max, step = 1 }: Bounds,
): number {
  const next = value === undefined ? (min ?? 0) : nearest(value + direction * step, step);
  return Math.min(max ?? Infinity, Math.max(min ?? -Infinity, next));
}

/** Free of the dust of binary fractions: 0.1 + 0.2 is 0.3 to a knitter. */
const nearest = (value: number, step: number): number => {
  const digits = Math.max(0, (String(step).split('.')[1] ?? '').length);
  return Number(value.toFixed(Math.max(digits, 2)));
};
