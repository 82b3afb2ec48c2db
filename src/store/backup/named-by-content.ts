import type { PlanId } from '../../progress/log.ts';
import { plansIn } from '../../progress/log-chain.ts';
import { planNamesOf, plansOfGarment } from '../garment/plan-versions.ts';
import { grouped } from '../grouped.ts';
import { type GarmentRecord, type PieceRecord, type PlanRecord, planIdOf } from '../records.ts';
import type { Backup } from './document.ts';

/**
 * A backup in which every plan is named by what it says, and every entry names its plan: older devices numbered their
 * plans only, so that two of them called different plans the same, and named them seldom. The same for the same backup,
 * whoever does it.
 */
export function namedByContent(backup: Backup): Backup {
  const names = new Map<PlanId, PlanId>();
  const plans = backup.plans.map((plan) => {
    if (isNamedByContent(plan)) return plan;
    const id = planIdOf(plan);
    names.set(plan.id, id);
    return { ...plan, id };
  });
  if (names.size === 0 && backup.entries.every(({ plan }) => plan !== undefined)) return backup;
  const named = (id: PlanId): PlanId => names.get(id) ?? id;
  const renamed = (piece: PieceRecord) => (piece.plans ? { ...piece, plans: piece.plans.map(named) } : piece);
  return {
    ...backup,
    plans,
    garments: backup.garments.map((garment) => withPieces(garment, renamed)),
    entries: [...grouped(backup.entries, ({ make }) => make).values()].flatMap((ofMake) => {
      const planOf = plansIn(ofMake);
      return ofMake.map((entry) => {
        const plan = planOf(entry);
        return plan === undefined ? entry : { ...entry, plan: named(plan) };
      });
    }),
  };
}

const isNamedByContent = ({ id }: PlanRecord): boolean => id.slice(id.lastIndexOf('/')).includes('-');

/** A garment of which every piece names its plans, which may be among the newest of one device and not of another. */
export function withPlansNamed(garment: GarmentRecord, plans: readonly PlanRecord[]): GarmentRecord {
  const known = plansOfGarment(plans.filter((plan) => plan.garment === garment.id));
  return withPieces(garment, (piece) => ({
    ...piece,
    plans: piece.plans ?? planNamesOf(garment.id, piece, known),
  }));
}

/** Also of pieces that were taken out, and of versions that other devices made. */
function withPieces(garment: GarmentRecord, change: (piece: PieceRecord) => PieceRecord): GarmentRecord {
  const { marks } = garment;
  const gone = marks?.gone?.map((one) => ({ ...one, piece: change(one.piece) }));
  const also = marks?.also?.map(({ of, ...version }) => ({
    ...version,
    ...(of && { of: of.pieces ? { ...of, pieces: of.pieces.map(change) } : of }),
  }));
  return {
    ...garment,
    pieces: garment.pieces.map(change),
    ...(marks && { marks: { ...marks, ...(gone && { gone }), ...(also && { also }) } }),
  };
}
