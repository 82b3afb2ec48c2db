import type { FabricName } from '../../knit/fabric.ts';
import { withGaugeIn } from '../../knit/piece/gauges.ts';
import type { GarmentId } from '../../progress/log.ts';
import { garmentInHand } from '../state.ts';
import { changeGarment } from './change-garment.ts';
import { openGarment, openGarmentInHand } from './open-garments.ts';

/** Keeps her answer of which fabric the garment's tension was measured in. Measures and drawings follow, no row does. */
export async function nameGauge(id: GarmentId, fabric: FabricName): Promise<boolean> {
  const stored = await changeGarment(id, (garment) => ({
    ...garment,
    pieces: garment.pieces.map((piece) => ({ ...piece, recipe: withGaugeIn(piece.recipe, fabric) })),
  }));
  if (!stored) return false;
  await openGarment(id);
  if (garmentInHand.value?.garment.id === id) await openGarmentInHand(id);
  return true;
}
