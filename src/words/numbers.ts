import { localeOf, speech } from './settings.ts';

export interface NumberLook {
  /** as it is typed: no marks between thousands */
  readonly plain?: boolean;
  /** digits after the mark, at most; 2 unless said */
  readonly digits?: number;
  /** 12 % for 0.12 */
  readonly percent?: boolean;
}

const formats: Record<string, Intl.NumberFormat> = {};

/** Written alike in every language of ours; making a format takes longer than the rest of a row's sentence. */
const NO_MARKS = 999;

export function saysNumber(
  value: number,
  { plain = false, digits = 2, percent = false }: NumberLook = {},
): string {
  if (!percent && Number.isInteger(value) && value >= 0 && value <= NO_MARKS) return String(value);
  const locale = localeOf(speech.value);
  const key = `${locale} ${plain} ${digits} ${percent}`;
  formats[key] ??= new Intl.NumberFormat(locale, {
    maximumFractionDigits: digits,
    useGrouping: !plain,
    style: percent ? 'percent' : 'decimal',
  });
  return formats[key].format(value);
}

const lists: Record<string, Intl.ListFormat> = {};

/** 'back, front and sleeve' */
export function saysList(parts: readonly string[]): string {
  const [only = ''] = parts;
  if (parts.length < 2) return only;
  const locale = localeOf(speech.value);
  lists[locale] ??= new Intl.ListFormat(locale);
  return lists[locale].format(parts);
}
