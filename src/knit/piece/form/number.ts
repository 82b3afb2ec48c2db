import { type Fault, fault, type Where } from '../../fault.ts';
import type { Typed } from './form.ts';

/** Collects what cannot be read, so that one look at a form finds every such field. */
export type Report = (found: Fault) => void;

const whole = /^\d{1,6}$/;
const decimal = /^\d{1,6}(?:[.,]\d{1,18})?$/;

/** A count as typed; 0 (and a fault) when it is not one. */
export function readWhole(typed: Typed, at: Where, report: Report, least = 0): number {
  const text = typed.trim();
  if (text === '') return tell(report, fault('blank', {}, at));
  if (!whole.test(text)) return tell(report, fault('not a whole number', { typedText: text }, at));
  const value = Number(text);
  if (value < least) {
    tell(report, fault('number too small', { foundNumber: value, leastNumber: least }, at));
  }
  return value;
}

/** A measure as typed, with a point or a comma; 0 (and a fault) when it is not one above 0. */
export function readDecimal(typed: Typed, at: Where, report: Report): number {
  const text = typed.trim();
  if (text === '') return tell(report, fault('blank', {}, at));
  const value = decimal.test(text) ? Number(text.replace(',', '.')) : Number.NaN;
  if (!(value > 0)) return tell(report, fault('not a measure', { typedText: text }, at));
  return value;
}

/** A list of counts parted by commas, semicolons, blanks or plus signs: '4, 3, 2, 2'. */
export function readList(typed: Typed, at: Where, report: Report): readonly number[] {
  const words = typed.split(/[\s,;+]+/).filter((word) => word !== '');
  const wrong = words.find((word) => !whole.test(word));
  if (wrong !== undefined) {
    tell(report, fault('not a whole number', { typedText: wrong }, at));
    return [];
  }
  return words.map(Number);
}

function tell(report: Report, found: Fault): 0 {
  report(found);
  return 0;
}
