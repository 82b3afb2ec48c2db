import type { FabricName } from '../fabric.ts';
import { factsOf, sameCloth } from '../fabric-facts.ts';
import type { Gauge } from '../gauge.ts';
import type { Swatch, Yarn } from '../piece/garment.ts';
import { loopLengthMm } from './loop-length.ts';

/** How the yarn in one stitch was found, the surest first. */
export type YarnBasis = 'weighed swatch' | 'weighed swatch of another fabric' | 'loop length';

export interface PerStitch {
  /** yarn in one stitch, mm as held (strands together count once) */
  readonly mm: number;
  readonly basis: YarnBasis;
  /** share to buy on top, for what the basis cannot know; common practice, no published source */
  readonly margin: number;
}

const MARGIN: Readonly<Record<YarnBasis, number>> = {
  'weighed swatch': 0.05,
  'weighed swatch of another fabric': 0.1,
  'loop length': 0.2,
};

/** Fabrics that the loop-length relation was not made for; common practice, no published source. */
const WIDER_MARGIN = 0.25;

/** Yarn in one stitch of a fabric: from a weighed swatch and the ball's metres, else from the gauge. */
export function yarnPerStitch(
  fabric: FabricName,
  gauge: Gauge,
  swatches: readonly Swatch[] = [],
  yarn?: Yarn,
): PerStitch {
  const weighed = swatches.filter((s) => mmPerLoop(s, yarn) !== undefined);
  const own =
    weighed.find((s) => s.fabric === fabric) ??
    weighed.find((s) => sameCloth(s.fabric, fabric)) ??
    weighed[0];
  const mm = own && mmPerLoop(own, yarn);
  if (own && mm !== undefined) {
    const basis = sameCloth(own.fabric, fabric) ? 'weighed swatch' : 'weighed swatch of another fabric';
    return { mm, basis, margin: MARGIN[basis] };
  }
  return {
    mm: loopLengthMm(gauge),
    basis: 'loop length',
    margin: factsOf(fabric).isPlain ? MARGIN['loop length'] : WIDER_MARGIN,
  };
}

/** A weighed swatch of r rows of s stitches holds s·(r + 2) loops: its cast-on and bind-off are a row each. */
function mmPerLoop(swatch: Swatch, yarn: Yarn | undefined): number | undefined {
  const { weighed } = swatch;
  const perGram = yarn && heldMetresPerGram(yarn);
  if (!weighed || perGram === undefined) return undefined;
  const loops = weighed.stitches * (weighed.rows + 2);
  return loops > 0 && weighed.grams > 0 ? (weighed.grams * perGram * 1000) / loops : undefined;
}

/** Metres of yarn as held in a gram of it: strands held together share the weight. */
export const heldMetresPerGram = ({ grams, metres, strands = 1 }: Yarn): number | undefined =>
  grams && metres && strands >= 1 ? metres / grams / strands : undefined;
