import type { GarmentId } from '../../progress/log.ts';
import { grouped } from '../grouped.ts';
import type { Backup } from './document.ts';

/** Each garment of a backup as a backup of its own, without settings and photos, by its id. */
export function byGarment({ format, version, madeAt, device, ...all }: Backup): Map<GarmentId, Backup> {
  const head = { format, version, madeAt, device };
  const plans = grouped(all.plans, (plan) => plan.garment);
  const entries = grouped(all.entries, (entry) => entry.make.slice(0, entry.make.indexOf('/')));
  const of = (id: GarmentId) => ({ plans: plans.get(id) ?? [], entries: entries.get(id) ?? [] });
  return new Map(
    all.garments.map((garment) => [
      garment.id,
      { ...head, garments: [garment], ...of(garment.id), settings: {}, photos: [] },
    ]),
  );
}
