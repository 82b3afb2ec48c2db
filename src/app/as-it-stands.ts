import type { StandingGarment } from '../knit/piece/standing.ts';
import { garmentOf } from './garment-of.ts';
import type { GarmentView } from './state.ts';

/** The garment as it stands, for what reckons with it: its pieces by the plans in force, its yarn as written down now. */
export const asItStands = ({ garment, pieces }: GarmentView): StandingGarment => ({
  ...garmentOf(garment),
  pieces,
});
