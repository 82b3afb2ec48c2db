import type { Backup } from './document.ts';
import { byId, oneOf, stableJson } from './stable.ts';

/**
 * Two backups as one: the logs are united, of a garment the recipe changed last holds, nothing is taken away.
 * The same in whichever order and however often it is done.
 */
export function mergeBackups(a: Backup, b: Backup): Backup {
  return {
    format: a.format,
    version: a.version,
    madeAt: Math.max(a.madeAt, b.madeAt),
    device: [a.device, b.device].sort()[1] ?? '',
    garments: united(a.garments, b.garments, laterGarment),
    plans: united(a.plans, b.plans, oneOf),
    entries: united(a.entries, b.entries, oneOf),
    settings: settingsOf(a.settings, b.settings),
    photos: united(a.photos, b.photos, oneOf),
  };
}

type Garment = Backup['garments'][number];

function laterGarment(a: Garment, b: Garment): Garment {
  if (a.changedAt !== b.changedAt) return a.changedAt > b.changedAt ? a : b;
  return oneOf(a, b);
}

/** Things of both, each id once; where both have it, `choose` says which. */
export function united<T extends { readonly id: string }>(
  a: readonly T[],
  b: readonly T[],
  choose: (a: T, b: T) => T,
): T[] {
  const all = new Map(a.map((item) => [item.id, item]));
  for (const item of b) {
    const known = all.get(item.id);
    all.set(item.id, known === undefined ? item : choose(known, item));
  }
  return byId([...all.values()]);
}

function settingsOf(a: Backup['settings'], b: Backup['settings']): Backup['settings'] {
  const names = [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
  return Object.fromEntries(
    names.map((name) => {
      if (!Object.hasOwn(a, name)) return [name, b[name]];
      if (!Object.hasOwn(b, name)) return [name, a[name]];
      return [name, stableJson(a[name]) >= stableJson(b[name]) ? a[name] : b[name]];
    }),
  );
}
