import { assumedGauge, type FabricName } from '../fabric.ts';
import { factsOf, sameCloth } from '../fabric-facts.ts';
import type { Gauge } from '../gauge.ts';
import { fabricOfGauge, type MeasuredGauge } from '../measured-gauge.ts';
import type { Recipe } from './recipe.ts';

/** Used only for the proportions of drawings while no gauge is given: a usual light-to-medium yarn in stocking stitch. */
const UNKNOWN_GAUGE: Gauge = { stitches: 21, rows: 28 };

type Gauged = Pick<Recipe, 'gauge' | 'gauges'>;

/** Gauge of a fabric in a piece: measured in that fabric, else guessed from the one that was measured. */
export function gaugeOf(recipe: Gauged, fabric: FabricName): Gauge {
  const own = measuredIn(recipe, fabric);
  if (own) return own;
  const { gauge = UNKNOWN_GAUGE } = recipe;
  return assumedGauge(fabric, gauge, fabricOfGauge(gauge));
}

function measuredIn({ gauge, gauges }: Gauged, fabric: FabricName): Gauge | undefined {
  if (gauge?.fabric === fabric) return gauge;
  return gauges?.[fabric];
}

/** A fabric whose gauge nobody measured, and the fabric that its figure was guessed from. */
export interface Guess {
  readonly fabric: FabricName;
  readonly from: FabricName;
}

/** Every fabric of the pieces whose figure is guessed; none where no tension is known at all. */
export function guessesIn(pieces: readonly Recipe[]): Guess[] {
  const found = new Map<string, Guess>();
  for (const piece of pieces) {
    const { gauge } = piece;
    if (!gauge) continue;
    const from = fabricOfGauge(gauge);
    for (const { fabric } of piece.parts.flatMap((part) => part.sections)) {
      if (sameCloth(fabric, from) || measuredIn(piece, fabric)) continue;
      found.set(`${fabric} ${from}`, { fabric, from });
    }
  }
  return [...found.values()];
}

/**
 * The tension to be asked about: one that names no fabric, where most rows of the pieces that have such a one are garter
 * stitch. It was taken as stocking stitch, and nothing but her answer may change that.
 */
export function unnamedGarterGauge(pieces: readonly Recipe[]): MeasuredGauge | undefined {
  const unnamed = pieces.filter(({ gauge }) => gauge && gauge.fabric === undefined);
  const rows = new Map<FabricName, number>();
  for (const { makes, parts } of unnamed) {
    for (const section of parts.flatMap((part) => part.sections)) {
      rows.set(section.fabric, (rows.get(section.fabric) ?? 0) + makes * section.rows);
    }
  }
  const [main] = [...rows].sort((a, b) => b[1] - a[1]);
  return main !== undefined && factsOf(main[0]).ridges ? unnamed[0]?.gauge : undefined;
}

/** The piece with its tension said to be of the fabric; one that names a fabric already stays as it is. */
export const withGaugeIn = (piece: Recipe, fabric: FabricName): Recipe =>
  piece.gauge && piece.gauge.fabric === undefined ? { ...piece, gauge: { ...piece.gauge, fabric } } : piece;
