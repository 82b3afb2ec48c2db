import { begunIn } from '../uniting/begun.ts';
import { uniteGarments } from '../uniting/unite-garments.ts';
import type { Backup } from './document.ts';
import { namedByContent, withPlansNamed } from './named-by-content.ts';
import { byId, oneOf, stableJson } from './stable.ts';

/**
 * Two backups as one: the logs are united, each garment part by part, plans by what they say; nothing is taken away.
 * The same in whichever order and however often it is done.
 */
export function mergeBackups(first: Backup, second: Backup): Backup {
  const [a, b] = [namedByContent(first), namedByContent(second)];
  const entries = united(a.entries, b.entries, oneOf);
  const begun = begunIn(entries);
  const plans = united(a.plans, b.plans, oneOf);
  const garment = (one: Garment, two: Garment) => {
    if (one.marks === undefined && stableJson(one) === stableJson(two)) return one;
    const [named, other] = [withPlansNamed(one, a.plans), withPlansNamed(two, b.plans)];
    return withMirrors(
      uniteGarments(named, other, (piece) => begun.get(`${one.id}/${piece}`)),
      plans,
    );
  };
  const garments = united(a.garments, b.garments, garment);
  const gone = photosGone(garments);
  return {
    format: a.format,
    version: a.version,
    madeAt: Math.max(a.madeAt, b.madeAt),
    device: [a.device, b.device].sort()[1] ?? '',
    garments,
    plans,
    entries,
    settings: settingsOf(a.settings, b.settings),
    photos: united(a.photos, b.photos, oneOf).filter(({ id }) => !gone.has(id)),
  };
}

type Garment = Backup['garments'][number];

/** Where makes that were begun came back to a piece of which nobody has planned the mirrored ones, all are alike. */
function withMirrors(garment: Garment, plans: Backup['plans']): Garment {
  const planned = new Set(plans.map(({ piece, part, mirror }) => `${piece}/${part}/${mirror}`));
  const lacks = ({ id, recipe }: Garment['pieces'][number]) =>
    recipe.mirrored === true &&
    recipe.makes > 1 &&
    recipe.parts.some((_, part) => !planned.has(`${id}/${part}/true`));
  if (!garment.pieces.some(lacks)) return garment;
  return {
    ...garment,
    pieces: garment.pieces.map((piece) =>
      lacks(piece) ? { ...piece, recipe: { ...piece.recipe, mirrored: false } } : piece,
    ),
  };
}

/** Ids of the photos that were taken away, on whichever device. */
export const photosGone = (garments: readonly Garment[]): ReadonlySet<string> =>
  new Set(garments.flatMap(({ marks }) => marks?.photosGone?.map(({ id }) => id) ?? []));

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
