import type { SeamKind, SeamWay } from './joint.ts';

/** The kinds of seam that a text names. */
export type ToldSeam = Extract<SeamKind, 'shoulder' | 'side' | 'sleeve' | 'armhole' | 'raglan'>;

/** What a text tells of the making up: where it is silent, the shapes of the pieces tell. */
export interface Told {
  /** seams that are sewn, whatever is told of them beside that */
  readonly seams: ReadonlySet<ToldSeam>;
  /** the way that shoulders are closed */
  readonly shoulderWay?: SeamWay;
  /** stitches of one shoulder */
  readonly shoulder?: { readonly back: number; readonly front: number };
  /** rows of a side, from the cast-on to the armhole */
  readonly side?: { readonly back: number; readonly front: number };
  /** rows of the sleeve's own seam */
  readonly sleeveRows?: number;
  /** rows of the sleeve's sides that are sewn to what is bound off at the underarm; 0 where the sleeve has its own */
  readonly indentRows?: number;
  /** a sleeve's edge and its armhole, as measured, mm */
  readonly top?: { readonly sleeveMm: number; readonly armholeMm: number };
  /** what a band picks up, in hundredths of the stitches that its edge has room for, by its name in small letters */
  readonly shares?: ReadonlyMap<string, number>;
  /** of a placket the band that lies on top, in small letters */
  readonly onTop?: string;
  /** rows of one side */
  readonly opening?: { readonly of: 'back' | 'raglan'; readonly rows: number };
  /** of two fronts that are one piece */
  readonly leftFirst?: boolean;
  /** the sleeve ends with its cuff */
  readonly topDown?: boolean;
}

/** Nothing is told. */
export const nothingTold: Told = { seams: new Set() };
