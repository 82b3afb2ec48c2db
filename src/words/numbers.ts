import { languageTable } from './languages.ts';
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

/** Below it no number has a mark between thousands. */
const NO_MARKS = 999;

export function saysNumber(
  value: number,
  { plain = false, digits = 2, percent = false }: NumberLook = {},
): string {
  const short = rounded(value, digits);
  if (!percent && value >= 0 && short <= NO_MARKS)
    return String(short).replace('.', languageTable[speech.value.language].decimal);
  const locale = localeOf(speech.value);
  const key = `${locale} ${plain} ${digits} ${percent}`;
  formats[key] ??= new Intl.NumberFormat(locale, {
    maximumFractionDigits: digits,
    useGrouping: !plain,
    style: percent ? 'percent' : 'decimal',
  });
  return formats[key].format(value);
}

/**
 * As Intl rounds it, halves upwards, by the digits it is written in. Not by Intl itself: its first format takes longer than
 * all the rest of a screen.
 */
const rounded = (value: number, digits: number): number =>
  Number(`${Math.round(Number(`${value}e${digits}`))}e-${digits}`);

const lists: Record<string, Intl.ListFormat> = {};

/** 'back, front and sleeve' */
export function saysList(parts: readonly string[]): string {
  const [only = ''] = parts;
  if (parts.length < 2) return only;
  const locale = localeOf(speech.value);
  lists[locale] ??= new Intl.ListFormat(locale);
  return lists[locale].format(parts);
}
