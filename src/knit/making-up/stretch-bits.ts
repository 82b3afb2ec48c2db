import type { PlannedPart } from '../piece/planned.ts';
import type { Bit } from './boundary.ts';
import type { Stretch } from './joint.ts';

/** Which bits of a side a stretch means, from and up to; undefined where none are there, or they do not hang together. */
export function chosen(
  all: readonly Bit[],
  { sections, rows, level, shaped }: Stretch,
): [number, number] | undefined {
  let [from, to] = [0, all.length];
  if (sections ?? rows) {
    const isIn = (bit: Bit) =>
      (sections === undefined || sections.includes(bit.section)) &&
      (rows === undefined || (bit.row >= rows.first && bit.row <= rows.last));
    from = all.findIndex(isIn);
    to = all.reduce((end, bit, i) => (isIn(bit) ? i + 1 : end), 0);
    if (from < 0 || !all.slice(from, to).every(isIn)) return undefined;
  }
  if (level !== undefined) {
    const first = all[from];
    if (first?.level !== true) return undefined;
    if (level === 'only') to = from + 1;
    else from += 1;
  }
  if (shaped !== undefined) {
    const first = all.slice(from, to).findIndex(({ by }) => by < 0);
    const at = first < 0 ? to : from + first;
    if (shaped === 'before') to = at;
    else from = at;
  }
  return [from, to];
}

/** Short rows may turn before the edge on every row of a section: a stretch without length. */
export function idleAt(
  all: readonly Bit[],
  { sections, rows, level }: Stretch,
  part: PlannedPart,
): [number, number] | undefined {
  const section = part.sections.find(({ name }) => sections?.includes(name));
  if (!section || rows || level || all.some((bit) => sections?.includes(bit.section))) return undefined;
  const at = all.filter(({ row }) => row < section.first).length;
  return [at, at];
}
