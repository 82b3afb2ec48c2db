import { languageNow } from './settings.ts';

/**
 * A figure with its sign or fraction, '16¾', as it stands in every language: from left to right (UAX #9), also in one that
 * is written the other way. No hidden letters where there is nothing to turn.
 */
export const fromLeft = (figure: string): string =>
  languageNow().direction ? `\u2066${figure}\u2069` : figure;
