import { roleOf } from '../making-up/role.ts';
import { gaugeIn } from '../piece/planned.ts';
import type { StandingGarment } from '../piece/standing.ts';
import { loopLengthMm } from './loop-length.ts';

/** A swatch to each side, mm; common practice, no published source. */
const SWATCH_MM = 150;

/**
 * Share more for a child's garment, by the width of its back: guides and leaflets ask for 1.3 to 1.7 times what the
 * stitches of babies' and children's garments take (Ajanta Studios, yardage guide; Caron CAK0329-008151M, sizes 2 to
 * 10), and for no more than the usual reserve from women's sizes up.
 */
const SMALL = { share: 0.4, upToMm: 340, fadesToMm: 420 } as const;

/** What is bought beyond the rows and their reserve while only the gauge is known. */
export interface BeyondTheRows {
  /** for the swatch that is still to be knitted, m */
  readonly swatch: number;
  /** of what the rows take */
  readonly share: number;
}

/** Only of a garment, which has a back: a single piece is not taken for one. */
export function beyondTheRows({ pieces }: Pick<StandingGarment, 'pieces'>): BeyondTheRows {
  const back = pieces.find(({ recipe }) => roleOf(recipe) === 'back')?.makes[0]?.parts[0];
  if (!back) return { swatch: 0, share: 0 };
  const width = Math.max(
    ...back.rows.map(({ before, section }) => before * (back.cells[section]?.width ?? 0)),
  );
  const gauge = gaugeIn(back, back.rows[Math.floor(back.rows.length / 2)]?.section ?? 0);
  const stitches = (gauge.stitches * gauge.rows * SWATCH_MM ** 2) / 10_000;
  const fades = (SMALL.fadesToMm - width) / (SMALL.fadesToMm - SMALL.upToMm);
  return {
    swatch: (stitches * loopLengthMm(gauge)) / 1000,
    share: SMALL.share * Math.min(1, Math.max(0, fades)),
  };
}
