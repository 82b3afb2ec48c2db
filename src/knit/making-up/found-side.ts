import type { PlannedPart, PlannedRow } from '../piece/planned.ts';
import type { Edge } from '../piece/recipe.ts';
import { type Bit, sideBits } from './boundary.ts';
import type { Line, Stretch } from './joint.ts';

/** A bit of a side with the part that it belongs to. */
interface Found extends Bit {
  readonly part: string;
}

/** Groups this many rows apart still belong to one slope. */
const SLOPE_GAP = 5;

/** The side of a make from its cast-on to its top, through the parts that lie above each other, for what its shape tells. */
export class FoundSide {
  private readonly bits: readonly Found[];
  private readonly chain: readonly PlannedPart[];
  private readonly lengths: ReadonlyMap<string, number>;

  constructor(
    private readonly piece: string,
    private readonly make: number,
    parts: readonly PlannedPart[],
    private readonly edge: Edge,
  ) {
    this.chain = chainAt(parts, edge);
    const sides = this.chain.map((part) => ({ part: part.name, bits: sideBits(part, edge) }));
    this.lengths = new Map(sides.map(({ part, bits }) => [part, bits.length]));
    this.bits = sides.flatMap(({ part, bits }) => bits.map((bit) => ({ ...bit, part })));
  }

  get end(): number {
    return this.bits.length;
  }

  /** Where rows begin that are called so; undefined where none are. */
  begins(names: readonly string[]): number | undefined {
    const at = this.bits.findIndex(({ section }) => names.includes(section));
    return at < 0 ? undefined : at;
  }

  /** Behind the last of them. */
  ends(names: readonly string[]): number | undefined {
    const at = this.last(({ section }) => names.includes(section));
    return at < 0 ? undefined : at + 1;
  }

  /** Where the groups of a shoulder (or the turns of its short rows) begin; the end where it has none. */
  slope(inPairs = false): number {
    let at = this.end;
    let plain = 0;
    for (let i = this.end - 1; i >= 0 && plain <= SLOPE_GAP; i -= 1) {
      const bit = this.bits[i];
      if (!bit?.level) plain += 1;
      else if (bit.by < 0) [at, plain] = [i, 0];
    }
    return Math.min(at, this.turned(inPairs));
  }

  /** Where the first row near the top turns before the edge, or the pair of rows begins that it belongs to; the end where none does. */
  private turned(inPairs: boolean): number {
    let at = this.end;
    let plain = 0;
    const parts = this.chain.map(({ name }) => name);
    for (const { name, rows } of [...this.chain].reverse())
      for (let i = rows.length - 1; i >= 0 && plain <= SLOPE_GAP; i -= 1) {
        const row = rows[i];
        if (!row || !turnsBefore(row, this.edge)) plain += 1;
        else {
          const from = inPairs && row.side === 'WS' ? row.n - 1 : row.n;
          // a row that turns here is no bit: what follows may lie in the next part
          const first = this.bits.findIndex((bit) =>
            bit.part === name ? bit.row >= from : parts.indexOf(bit.part) > parts.indexOf(name),
          );
          [at, plain] = [first < 0 ? this.end : first, 0];
        }
      }
    return at;
  }

  /** The first group below `upTo` that takes stitches away (or adds them); −1 where there is none. */
  firstLevel(upTo: number, way: -1 | 1): number {
    return this.bits.findIndex(({ level, by }, i) => i < upTo && level && Math.sign(by) === way);
  }

  /** Something is taken away here on the way up. */
  isShaped = (): boolean => this.bits.some(({ by }) => by < 0);

  lastLevel(way: -1 | 1): number {
    return this.last(({ level, by }) => level && Math.sign(by) === way);
  }

  /** Where the last narrowing below `upTo` begins, after everything that widens; −1 where nothing narrows there. */
  narrows(upTo: number): number {
    const widened = this.last(({ by }, i) => i < upTo && by > 0);
    const at = this.bits.findIndex(({ by }, i) => i > widened && i < upTo && by < 0);
    const times = this.bits.filter(({ by }, i) => i >= at && i < upTo && by < 0).length;
    return at < 0 || times < LEAST_NARROWING ? -1 : at;
  }

  /** Rows between the last narrowing and the end. */
  plainAtTop(): number {
    const last = this.last(({ by }) => by < 0);
    return this.bits.slice(last + 1).filter(({ level }) => !level).length;
  }

  /** So many mm below `upTo`, to the nearest row. */
  below(upTo: number, mm: number): number {
    let left = mm;
    for (let i = upTo - 1; i >= 0; i -= 1) {
      const bit = this.bits[i];
      if (!bit || bit.level) continue;
      if (left < bit.height / 2) return i + 1;
      left -= bit.height;
    }
    return 0;
  }

  /** So many mm from the beginning, to the nearest row. */
  above(mm: number): number {
    let left = mm;
    for (const [i, bit] of this.bits.entries()) {
      if (left < bit.height / 2) return i;
      if (!bit.level) left -= bit.height;
    }
    return this.end;
  }

  /** Where groups begin that take so many stitches away up to the end, and no more; undefined where none do. */
  taking(stitches: number): number | undefined {
    let left = stitches;
    for (let i = this.end - 1; i >= 0 && left > 0; i -= 1) {
      const bit = this.bits[i];
      if (bit?.level) left += bit.by;
      if (bit?.level && left === 0) return i;
    }
    return undefined;
  }

  /** Behind so many rows from the beginning, before what is taken away at once there. */
  behindRows(rows: number): number {
    let left = rows;
    const at = this.bits.findIndex(({ level }) => {
      if (left === 0) return true;
      if (!level) left -= 1;
      return false;
    });
    return at < 0 ? this.end : at;
  }

  /** So many rows before the end, with what is added at once below them. */
  beforeRows(rows: number): number {
    let left = rows;
    let at = this.end;
    while (at > 0 && (left > 0 || this.bits[at - 1]?.level)) {
      at -= 1;
      if (!this.bits[at]?.level) left -= 1;
      else if (left === 0) break;
    }
    return at;
  }

  /** Stitches and mm of a group. */
  levelAt(at: number): { readonly stitches: number; readonly mm: number } | undefined {
    const bit = this.bits[at];
    if (!bit?.level) return undefined;
    return { stitches: Math.abs(bit.by), mm: Math.abs(bit.by) * bit.width };
  }

  /** Stitches taken away in groups from `from` on. */
  takenFrom(from: number): number {
    return this.bits.slice(from).reduce((sum, { level, by }) => sum - (level ? by : 0), 0);
  }

  private last(which: (bit: Found, i: number) => boolean): number {
    for (let i = this.end - 1; i >= 0; i -= 1) {
      const bit = this.bits[i];
      if (bit && which(bit, i)) return i;
    }
    return -1;
  }

  /** The stretches from one bit up to another. */
  between(from: number, to: number): Line {
    const line: Stretch[] = [];
    for (const part of this.lengths.keys()) {
      const own = this.bits.slice(from, to).filter((bit) => bit.part === part);
      if (own.length === 0) continue;
      const { piece, make, edge } = this;
      const rows = own.map(({ row }) => row);
      const isWhole = own.length === this.lengths.get(part);
      const [first, last] = [Math.min(...rows), Math.max(...rows)];
      line.push({ piece, make, part, edge, ...(isWhole ? {} : { rows: { first, last } }) });
    }
    return line;
  }
}

/** Its last stitches, at this edge, are left for later rows. */
function turnsBefore({ side, steps }: PlannedRow, edge: Edge): boolean {
  const last = steps.at(-1);
  const ends = side === 'RS' ? 'left' : 'right';
  return ends === edge && last !== undefined && 'work' in last && last.work === 'unworked';
}

/** Fewer decreases than this are a slant of the side, no cap and no armhole. */
const LEAST_NARROWING = 3;

/** The parts above each other along an edge, the lowest first. */
export function chainAt(parts: readonly PlannedPart[], edge: Edge): readonly PlannedPart[] {
  const chain: PlannedPart[] = [];
  let part = parts[0];
  while (part) {
    chain.push(part);
    const { name } = part;
    part = parts.find(({ parent, from }) => parent === name && 'part' in from && from.edge === edge);
  }
  return chain;
}
