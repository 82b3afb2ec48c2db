import { saysNumber } from './numbers.ts';

/**
 * '118 → 96 → 0': counts one after the other. They stand apart from the text around them (a left-to-right isolate of
 * Unicode, UAX #9), from left to right as the arrow does: where a page runs from right to left it would read '96 → 118'.
 */
export const saysInTurn = (counts: readonly (number | string)[]): string =>
  `\u2066${counts.map((one) => (typeof one === 'number' ? saysNumber(one) : one)).join(' → ')}\u2069`;
