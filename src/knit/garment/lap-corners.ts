import type { PickUp } from '../piece/recipe.ts';
import { bandRows } from './band-piece.ts';
import { type Design, isSince } from './design.ts';
import { designGauge } from './gauges.ts';
import { lapBorder } from './neck-opening.ts';
import type { PanelCounts } from './panel-counts.ts';
import { stitchesIn } from './whole-numbers.ts';

/**
 * Stitches picked up in the corner between an open shoulder and the neck. A border round an outer corner wants more stitches as
 * it grows: two on every second row where it is mitred (knitting.today, 'Knitting Around the Corner (Edgings & Borders II)').
 * A rib stretches, and is not broken by increases: what lies round the corner halfway up the band is picked up at once
 * (common practice, no published source). None in the first edition.
 */
export function lapCorner(design: Design, { gauge }: PanelCounts): number {
  if (!isSince(2, design)) return 0;
  const band = lapBorder(design);
  const heightMm = (bandRows(design, band) * 100) / designGauge(design, band.fabric).gauge.rows;
  return Math.max(1, Math.round(stitchesIn(((Math.PI / 2) * heightMm) / 2, gauge)));
}

export const cornerAt = (
  along: 'left front' | 'right front' | 'left back' | 'right back',
  stitches: number,
): readonly PickUp[] => (stitches === 0 ? [] : [{ along: `${along} corner`, stitches }]);
