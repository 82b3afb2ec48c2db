/** A published pattern as a text of our own in modern abbreviations, with every count that the original states. */
export interface WorkedPattern {
  /** work, publisher, year; e-book number of Project Gutenberg (PG) */
  readonly source: string;
  readonly text: string;
  /** sizes that the text gives */
  readonly sizes: number;
  /** stitches left at the end of each part, by 'piece/part', for each size; only what the original states */
  readonly ends?: Readonly<Record<string, readonly number[]>>;
}
