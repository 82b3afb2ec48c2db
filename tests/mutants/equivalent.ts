/** Mutants that no test can see, each with the reason: they do not count. */
export interface Equivalent {
  readonly file: string;
  /** the line as it stands, without the space before it; undefined for all of the file's */
  readonly line: string;
  readonly before: string;
  readonly after: string;
  readonly why: string;
}

export const equivalents: readonly Equivalent[] = [];
