import { type Fault, ok, type Result, refuse } from '../fault.ts';
import type { Garment } from './garment.ts';
import { plan } from './plan.ts';
import { partsOfMake } from './planned.ts';
import { type StandingGarment, type StandingPiece, standingMake } from './standing.ts';

/**
 * A garment of which nothing is knitted yet, every make as its recipe has it.
 * @returns the planner's faults when a piece cannot be knitted
 */
export function asPlanned(garment: Garment): Result<StandingGarment> {
  const pieces: StandingPiece[] = [];
  const faults: Fault[] = [];
  for (const recipe of garment.pieces) {
    const made = plan(recipe);
    if (!made.ok) {
      faults.push(...made.faults);
      continue;
    }
    const makes = Array.from({ length: recipe.makes }, (_, i) =>
      standingMake(recipe, i + 1, partsOfMake(made.value, i + 1)),
    );
    pieces.push({ recipe, makes });
  }
  return faults.length > 0 ? refuse(...faults) : ok({ ...garment, pieces });
}
