/**
 * Which rows of a piece are in which colours, as it is written: 'Stripes, Sleeve, no. 2: rows 1 to 40: 2 rows in woad, 2
 * rows in sand, in turn.' Colours may be called by any words; what stands before the first row is whose rows they are.
 */
const SENTENCE = /^(?:Sizes? [^:]+ only: )?Stripes, (.+?): (rows? [\d–].*)\.$/;

/** @returns whose rows, and what is said of them; undefined of any other line */
export function stripeSentence(line: string): { readonly of: string; readonly said: string } | undefined {
  const [, of, said] = SENTENCE.exec(line) ?? [];
  return of === undefined || said === undefined ? undefined : { of, said };
}
