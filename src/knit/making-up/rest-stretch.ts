import type { Bit } from './boundary.ts';
import type { Stretch } from './joint.ts';

/** What of an edge is left over, as a stretch would say it: nothing more where it is the whole edge. */
type Of = Pick<Stretch, 'rows' | 'level' | 'stitches'>;

export const restOfEnd = (all: number, from: number, to: number): Of =>
  from === 0 && to === all ? {} : { stitches: { from, to } };

/** Bits from one up to another; undefined where a row would have to be parted in a way that no stretch can. */
export function restOfSide(bits: readonly Bit[], from: number, to: number): Of | undefined {
  if (from === 0 && to === bits.length) return {};
  const own = bits.slice(from, to);
  const numbers = own.map(({ row }) => row);
  const rows = { first: Math.min(...numbers), last: Math.max(...numbers) };
  const isIn = ({ row }: Bit) => row >= rows.first && row <= rows.last;
  const at = bits.flatMap((bit, i) => (isIn(bit) ? [i] : []));
  const [first, last] = [at[0], at.at(-1)];
  const isWhole = first === from && last === to - 1 && at.length === own.length;
  if (isWhole) return { rows };
  if (first === from && own.length === 1 && own[0]?.level) return { rows, level: 'only' };
  const isWithout = first === from - 1 && last === to - 1 && bits[from - 1]?.level === true;
  return isWithout ? { rows, level: 'without' } : undefined;
}
