import { assumedGauge, type FabricName } from '../fabric.ts';
import type { Gauge } from '../gauge.ts';
import type { Recipe } from './recipe.ts';

/** Used only for the proportions of drawings while no gauge is given: a usual light-to-medium yarn. */
const UNKNOWN_GAUGE: Gauge = { stitches: 21, rows: 28 };

/** Gauge of a fabric in a piece: swatched, or assumed from the main one. */
export const gaugeOf = (recipe: Pick<Recipe, 'gauge' | 'gauges'>, fabric: FabricName): Gauge =>
  recipe.gauges?.[fabric] ?? assumedGauge(fabric, recipe.gauge ?? UNKNOWN_GAUGE);
