import type { FabricName } from './fabric.ts';

/** What is asked of a fabric beside its face, its counts and its gauge. */
export interface FabricFacts {
  /** the fabric that it is turned over, or with one stitch more at its edge; else itself. One gauge holds for both */
  readonly cloth: FabricName;
  /** its rows lie in ridges, two to a ridge, and are counted so; a row of them is worked alike from either side */
  readonly ridges: boolean;
  /** stitches picked up along its rows where no gauge is asked for that; common practice, no published source */
  readonly pickUp?: { readonly stitches: number; readonly rows: number };
  /** how far a band of it stretches beyond its width; common practice, no published source */
  readonly stretch: number;
  /** it draws in: a border, above which another fabric goes on */
  readonly drawsIn: boolean;
  /** said when all of it is bound off: the commonest tight neck is a rib that is bound off knitwise */
  readonly boundOff: '' | ' in rib' | ' in pattern';
  /** its columns change from row to row: a decrease that follows its edge is a knit stitch there, so that both edges look alike */
  readonly edgesKnit?: true;
  /** the relation of loop length and gauge was made for it */
  readonly isPlain: boolean;
}

const table: Readonly<Record<FabricName, FabricFacts>> = {
  garter: {
    cloth: 'garter',
    ridges: true,
    pickUp: { stitches: 1, rows: 2 },
    stretch: 1.2,
    drawsIn: false,
    boundOff: '',
    isPlain: false,
  },
  stocking: { cloth: 'stocking', ridges: false, stretch: 1.2, drawsIn: false, boundOff: '', isPlain: true },
  'reverse stocking': {
    cloth: 'stocking',
    ridges: false,
    stretch: 1.2,
    drawsIn: false,
    boundOff: '',
    isPlain: true,
  },
  'rib 1x1': {
    cloth: 'rib 1x1',
    ridges: false,
    stretch: 1.35,
    drawsIn: true,
    boundOff: ' in rib',
    isPlain: false,
  },
  'rib 1x1 matched': {
    cloth: 'rib 1x1',
    ridges: false,
    stretch: 1.35,
    drawsIn: true,
    boundOff: ' in rib',
    isPlain: false,
  },
  'rib 2x2': {
    cloth: 'rib 2x2',
    ridges: false,
    stretch: 1.4,
    drawsIn: true,
    boundOff: ' in rib',
    isPlain: false,
  },
  moss: {
    cloth: 'moss',
    ridges: false,
    stretch: 1.15,
    drawsIn: false,
    boundOff: ' in pattern',
    edgesKnit: true,
    isPlain: false,
  },
};

export const factsOf = (fabric: FabricName): FabricFacts => table[fabric];

/** The same cloth: turned over, or with one stitch more at its edge. The gauge of the one is that of the other. */
export const sameCloth = (a: FabricName, b: FabricName): boolean => table[a].cloth === table[b].cloth;
