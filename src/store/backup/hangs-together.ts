import { type Fault, fault } from '../../knit/fault.ts';
import { parseMakeKey } from '../../progress/log.ts';
import { plansNamedBy } from '../garment/plan-versions.ts';
import { planId } from '../records.ts';
import type { Backup } from './document.ts';

/** Whether everything that a part of the backup speaks of is in it; the first thing that is not. */
export function hangsTogether(backup: Backup): Fault | undefined {
  const lists = ['garments', 'plans', 'entries', 'photos'] as const;
  for (const name of lists) {
    const twice = firstTwice(backup[name]);
    if (twice !== undefined) return loose(`${name}.${twice}`);
  }
  const garments = new Set(backup.garments.map((garment) => garment.id));
  const plans = new Map(backup.plans.map((plan) => [plan.id, plan]));
  return (
    looseGarment(backup, plans) ??
    loosePlan(backup, garments) ??
    looseEntry(backup, garments, plans) ??
    first(backup.photos, 'photos', (photo) => !garments.has(photo.garment))
  );
}

type Plans = ReadonlyMap<string, Backup['plans'][number]>;

function looseGarment(backup: Backup, plans: Plans): Fault | undefined {
  const newest = new Set(
    [...plans.values()].map((plan) => `${plan.garment}/${plan.piece}/${plan.part}/${plan.mirror}`),
  );
  return first(backup.garments, 'garments', (garment) => {
    if (firstTwice(garment.pieces) !== undefined) return true;
    if (plansNamedBy(garment).some((id) => !plans.has(id) || !id.startsWith(`${garment.id}/`))) return true;
    for (const { id, recipe } of garment.pieces) {
      const mirrors = recipe.mirrored === true && recipe.makes > 1 ? [false, true] : [false];
      const missing = recipe.parts.some((_, part) =>
        mirrors.some((mirror) => !newest.has(`${garment.id}/${id}/${part}/${mirror}`)),
      );
      if (missing) return true;
    }
    return false;
  });
}

const loosePlan = (backup: Backup, garments: ReadonlySet<string>): Fault | undefined =>
  first(backup.plans, 'plans', (plan) => {
    const id = planId(plan.garment, plan.piece, plan.part, plan.mirror, plan.version);
    const named = plan.id === id || (plan.id.startsWith(`${id}-`) && hash.test(plan.id.slice(id.length + 1)));
    return !garments.has(plan.garment) || plan.version < 1 || !named;
  });

/** what a plan says, in the letters of its name */
const hash = /^[0-9a-z]{1,20}$/;

const looseEntry = (backup: Backup, garments: ReadonlySet<string>, plans: Plans): Fault | undefined =>
  first(backup.entries, 'entries', (entry) => {
    const make = parseMakeKey(entry.make);
    if (make === undefined || !garments.has(make.garment)) return true;
    if (entry.plan === undefined) return false;
    const ownPlan = entry.plan.startsWith(`${make.garment}/${make.piece}/${make.part}/`);
    return !ownPlan || !plans.has(entry.plan);
  });

/** The first of them that is wrong, by its place in the file. */
function first<T>(items: readonly T[], name: string, wrong: (item: T) => boolean): Fault | undefined {
  const at = items.findIndex(wrong);
  return at < 0 ? undefined : loose(`${name}.${at}`);
}

function firstTwice(items: readonly { readonly id: string }[]): number | undefined {
  const seen = new Set<string>();
  for (const [i, { id }] of items.entries()) {
    if (seen.has(id)) return i;
    seen.add(id);
  }
  return undefined;
}

const loose = (path: string): Fault => fault('backup-damaged', { pathText: path });
