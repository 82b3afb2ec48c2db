import { localeOf, speech } from './settings.ts';

export interface NumberLook {
  /** as it is typed: no marks between thousands */
  readonly plain?: boolean;
  /** digits after the mark, at most; 2 unless said */
  readonly digits?: number;
  /** 12 % for 0.12 */
  readonly percent?: boolean;
}

const formats = new Map<string, Intl.NumberFormat>();

export function saysNumber(
  value: number,
  { plain = false, digits = 2, percent = false }: NumberLook = {},
): string {
  const locale = localeOf(speech.value);
  const key = `${locale} ${plain} ${digits} ${percent}`;
  let format = formats.get(key);
  if (!format) {
    format = new Intl.NumberFormat(locale, {
      maximumFractionDigits: digits,
      useGrouping: !plain,
      style: percent ? 'percent' : 'decimal',
    });
    formats.set(key, format);
  }
  return format.format(value);
}

/** 'back, front and sleeve' */
export const saysList = (parts: readonly string[]): string =>
  new Intl.ListFormat(localeOf(speech.value), { type: 'conjunction' }).format(parts);
