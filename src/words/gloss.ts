import type { StitchName } from '../knit/stitch.ts';

/** What a stitch is called and how it is made; both may hold trade words in brackets. */
export interface Gloss {
  readonly name: string;
  readonly how: string;
}

/** Crossings are explained by rule from their names, whatever their widths. */
export type CableName = Extract<
  StitchName,
  `${'c' | 't'}${number}${'f' | 'b'}` | `${number}/${number} ${'l' | 'r'}${'c' | 'pc'}` | 'rt' | 'lt'
>;

/** Every stitch but the crossings; a stitch without a gloss does not compile. */
export type Glossary = Readonly<Record<Exclude<StitchName, CableName>, Gloss>>;

/** A crossing, taken apart. `over` stitches lie on top and lean to `leans`; `under` pass behind, purled or knitted. */
export interface Crossing {
  readonly leans: 'left' | 'right';
  readonly over: number;
  readonly under: number;
  readonly purled: boolean;
  /** how many go on each side is for the pattern to say (an odd number with no split in its name) */
  readonly open: boolean;
}
