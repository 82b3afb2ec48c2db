import type { Language } from './languages.ts';

/**
 * Where a line may not end: between a number and what it counts, and between 'row' and its number. '118' at the end of a
 * line and 'stitches' on the next is read as another 118. Short words alone: with a long one a line would have to be as
 * long as both. 'Row 12 of 192' is long enough to be read in two.
 */
interface Short {
  /** what is counted */
  readonly counted: string;
  /** what a number is called by */
  readonly numbered: string;
  /** between two numbers */
  readonly of: string;
}

const short: Readonly<Record<Language, Short>> = {
  en: {
    counted:
      'stitch(?:es)?|sts?|loops?|rows?|ridges?|balls?|times|pieces?|buttons?|holes?|steps?|days?|hours?',
    numbered: 'rows?|line|step',
    of: 'of',
  },
  de: {
    counted:
      'Maschen?|M|Reihen?|Rippen?|Knäuel|Mal|mal|Teilen?|Teil|Knöpfen?|Knopf|Schritten?|Schritt|Tagen?|Tag|Stunden?',
    numbered: 'Reihen?|Zeile|Schritt',
    of: 'von',
  },
  fr: {
    counted: 'mailles?|m|rangs?|côtes?|pelotes?|fois|pièces?|boutons?|trous?|étapes?|jours?|heures?',
    numbered: 'rangs?|ligne|étape',
    of: 'sur',
  },
};

/** With no-break spaces behind what of these patterns is a number with something counted, and before what is one with a name. */
export function heldToCounted(text: string, language: Language, counts: string, named: string): string {
  const { counted, numbered, of } = short[language];
  return text
    .replace(new RegExp(`(?<=${counts}) (?=(?:${counted})(?![\\p{L}\\p{M}]))`, 'gu'), '\u00a0')
    .replace(new RegExp(`(?<=(?<!\\p{L})(?:${numbered})) (?=${named}(?! ${of} ))`, 'giu'), '\u00a0');
}
