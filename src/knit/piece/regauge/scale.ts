/** How many stitches and rows there are now for each one before. */
export interface Scale {
  readonly stitches: number;
  readonly rows: number;
}
