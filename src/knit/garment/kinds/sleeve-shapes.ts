/** What the drafts ask of a sleeve's shape below the underarm. */
export interface SleeveShapeFacts {
  /** it begins above its cuff as wide as the wrist; else as wide as at the underarm */
  readonly beginsNarrow: boolean;
  /** its cuff is as wide as the wrist, whatever lies above it */
  readonly hasOwnCuff: boolean;
  /** all that it is wider than its cuff is made up in the first row above it */
  readonly widensAtOnce: boolean;
}

const table = {
  tapered: { beginsNarrow: true, hasOwnCuff: true, widensAtOnce: false },
  straight: { beginsNarrow: false, hasOwnCuff: false, widensAtOnce: false },
  'after cuff': { beginsNarrow: false, hasOwnCuff: true, widensAtOnce: true },
} as const satisfies Readonly<Record<string, SleeveShapeFacts>>;

export type SleeveShape = keyof typeof table;
export const sleeveShapeFacts: Readonly<Record<SleeveShape, SleeveShapeFacts>> = table;
export const sleeveShapes = Object.keys(table) as readonly SleeveShape[];
