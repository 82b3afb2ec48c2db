import { dropKey, readJson, smallKeep, writeJson } from '../../store/beside/small-keep.ts';
import { joinParts, type LinkPart, readPart } from '../../store/share/link-parts.ts';

/** The codes of one garment that were photographed so far; each opens the app anew. */
const KEY = 'ridgeline.link-parts';

export type Collected =
  | { readonly text: string }
  | { readonly n: number; readonly of: number; readonly missing: readonly number[] };

/** A whole link as it is; a part with those that came before it, the whole as soon as none is missing. */
export function collectLink(text: string): Collected {
  const part = readPart(text);
  if (part === undefined) return { text };
  const keep = smallKeep();
  const before = partsIn(readJson(keep, KEY)).filter(
    ({ sum, of, n }) => sum === part.sum && of === part.of && n !== part.n,
  );
  const parts = [...before, part];
  const whole = joinParts(parts);
  if (whole !== undefined) {
    dropKey(keep, KEY);
    return { text: whole };
  }
  writeJson(
    keep,
    KEY,
    parts.map(({ n, of, sum, text: own }) => ['P', n, of, sum, own].join('.')),
  );
  const have = new Set(parts.map(({ n }) => n));
  const missing = Array.from({ length: part.of }, (_, i) => i + 1).filter((n) => !have.has(n));
  return { n: part.n, of: part.of, missing };
}

/** What lies in the keep is read as what comes from outside. */
const partsIn = (kept: unknown): readonly LinkPart[] =>
  Array.isArray(kept) ? kept.flatMap((one) => (typeof one === 'string' ? (readPart(one) ?? []) : [])) : [];
