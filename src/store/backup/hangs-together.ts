import { type Fault, fault } from '../../knit/fault.ts';
import { parseMakeKey } from '../../progress/log.ts';
import { planId } from '../records.ts';
import type { Backup } from './document.ts';

/** Whether everything that a part of the backup speaks of is in it; the first thing that is not. */
export function hangsTogether(backup: Backup): Fault | undefined {
  const lists = ['garments', 'plans', 'entries', 'photos'] as const;
  for (const name of lists) {
    const twice = firstTwice(backup[name]);
    if (twice !== undefined) return loose(`${name}.${twice}`, 'id twice');
  }
  const garments = new Set(backup.garments.map((garment) => garment.id));
  const plans = new Map(backup.plans.map((plan) => [plan.id, plan]));
  return (
    looseGarment(backup, plans) ??
    loosePlan(backup, garments) ??
    looseEntry(backup, garments, plans) ??
    first(backup.photos, 'photos', (photo) => (garments.has(photo.garment) ? undefined : 'no such garment'))
  );
}

type Plans = ReadonlyMap<string, Backup['plans'][number]>;

function looseGarment(backup: Backup, plans: Plans): Fault | undefined {
  const newest = new Set(
    [...plans.values()].map((plan) => `${plan.garment}/${plan.piece}/${plan.part}/${plan.mirror}`),
  );
  return first(backup.garments, 'garments', (garment) => {
    if (firstTwice(garment.pieces) !== undefined) return 'piece id twice';
    for (const { id, recipe } of garment.pieces) {
      const mirrors = recipe.mirrored === true && recipe.makes > 1 ? [false, true] : [false];
      const missing = recipe.parts.some((_, part) =>
        mirrors.some((mirror) => !newest.has(`${garment.id}/${id}/${part}/${mirror}`)),
      );
      if (missing) return 'a part without a plan';
    }
    return undefined;
  });
}

const loosePlan = (backup: Backup, garments: ReadonlySet<string>): Fault | undefined =>
  first(backup.plans, 'plans', (plan) => {
    if (!garments.has(plan.garment)) return 'no such garment';
    if (plan.version < 1) return 'version';
    return plan.id === planId(plan.garment, plan.piece, plan.part, plan.mirror, plan.version)
      ? undefined
      : 'id';
  });

const looseEntry = (backup: Backup, garments: ReadonlySet<string>, plans: Plans): Fault | undefined =>
  first(backup.entries, 'entries', (entry) => {
    const make = parseMakeKey(entry.make);
    if (make === undefined) return 'make';
    if (!garments.has(make.garment)) return 'no such garment';
    if (entry.plan === undefined) return undefined;
    const ownPlan = entry.plan.startsWith(`${make.garment}/${make.piece}/${make.part}/`);
    return ownPlan && plans.has(entry.plan) ? undefined : 'no such plan';
  });

function first<T>(
  items: readonly T[],
  name: string,
  wrong: (item: T) => string | undefined,
): Fault | undefined {
  for (const [i, item] of items.entries()) {
    const what = wrong(item);
    if (what !== undefined) return loose(`${name}.${i}`, what);
  }
  return undefined;
}

function firstTwice(items: readonly { readonly id: string }[]): number | undefined {
  const seen = new Set<string>();
  for (const [i, { id }] of items.entries()) {
    if (seen.has(id)) return i;
    seen.add(id);
  }
  return undefined;
}

const loose = (path: string, what: string): Fault =>
  fault('backup-damaged', { pathText: path, whatText: what });
