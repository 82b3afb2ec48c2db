/** A published pattern as a text of our own in modern abbreviations, with the counts that the original states. */
export interface WorkedPattern {
  /** work, publisher, year; e-book number of Project Gutenberg (PG) */
  readonly source: string;
  /**
   * what in the text is not the book's, or could not be compared with it again, and why it stands there. The counts,
   * and all that is not named here, were read in the book.
   */
  readonly ours: string;
  readonly text: string;
  /** sizes that the text gives */
  readonly sizes: number;
  /** stitches left at the end of each part, by 'piece/part', for each size; only what the original states */
  readonly ends?: Readonly<Record<string, readonly number[]>>;
}
