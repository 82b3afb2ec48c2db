import type { PlannedPart } from '../piece/planned.ts';
import type { StandingGarment, StandingMake } from '../piece/standing.ts';
import { type Bit, endOf, lengthAlong, sideBits } from './boundary.ts';
import type { Line, Stretch } from './joint.ts';
import { restOfEnd, restOfSide } from './rest-stretch.ts';
import { chosen, idleAt } from './stretch-bits.ts';
import { Ties } from './ties.ts';

export interface Measure {
  /** rows that it is high, and stitches that lie along it */
  readonly rows: number;
  readonly stitches: number;
  /** along the knitted edge */
  readonly mm: number;
}

/** A stretch found on its make. */
export interface Laid extends Measure {
  readonly stretch: Stretch;
  readonly part: PlannedPart;
  /** of a side */
  readonly bits: readonly Bit[];
  /** the edge that it lies on, and from where to where: bits of a side, stitches of an end */
  readonly on: string;
  readonly from: number;
  readonly to: number;
  /** its corners, in its own direction */
  readonly begin: string;
  readonly end: string;
}

/** What is left of an edge that no joint speaks of. */
export interface Rest extends Measure {
  readonly piece: string;
  readonly make: number;
  readonly part: string;
  readonly edge: Stretch['edge'];
  /** the same, to be joined by hand; undefined where it cannot be told as one stretch */
  readonly stretch: Stretch | undefined;
}

const EDGES = ['start', 'top', 'right', 'left'] as const;

/** The boundary of every make of a garment, and what of it is used. */
export class Boundaries {
  readonly ties = new Ties();
  private readonly parts = new Map<string, PlannedPart>();
  private readonly sides = new Map<string, readonly Bit[]>();
  private readonly used = new Map<string, (readonly [number, number])[]>();
  private readonly handedOn = new Set<string>();

  constructor({ pieces }: Pick<StandingGarment, 'pieces'>) {
    for (const { recipe, makes } of pieces) for (const make of makes) this.add(recipe.name, make);
  }

  private add(piece: string, { make, parts }: StandingMake): void {
    for (const part of parts) {
      const key = keyOf(piece, make, part.name);
      this.parts.set(key, part);
      for (const edge of ['right', 'left'] as const) {
        const bits = sideBits(part, edge);
        this.sides.set(`${key} ${edge}`, bits);
        if (bits.length === 0) this.ties.tie(`${key} start ${edge}`, `${key} top ${edge}`);
      }
    }
    for (const part of parts) this.handOn(piece, make, part, parts);
  }

  /** Parts that go on from this one lie beside each other along its top. */
  private handOn(piece: string, make: number, part: PlannedPart, parts: readonly PlannedPart[]): void {
    const at = (edge: 'right' | 'middle' | 'left') =>
      parts.filter(({ parent, from }) => parent === part.name && 'part' in from && from.edge === edge);
    const children = [...at('right'), ...at('middle'), ...at('left').reverse()];
    if (children.length === 0) return;
    const key = keyOf(piece, make, part.name);
    this.handedOn.add(`${key} top`);
    let corner = `${key} top right`;
    for (const child of children) {
      const own = keyOf(piece, make, child.name);
      this.handedOn.add(`${own} start`);
      this.ties.tie(corner, `${own} start right`);
      corner = `${own} start left`;
    }
    this.ties.tie(corner, `${key} top left`);
  }

  /** The part of a band that is picked up. */
  pickedUpIn(piece: string, make: number): PlannedPart | undefined {
    const key = JSON.stringify([piece, make]).slice(0, -1);
    for (const [own, part] of this.parts) if (own.startsWith(`${key},`) && 'pickUp' in part.from) return part;
    return undefined;
  }

  /** Undefined where there is no such edge. */
  lay(stretch: Stretch): Laid | undefined {
    const key = keyOf(stretch.piece, stretch.make, stretch.part);
    const part = this.parts.get(key);
    const on = `${key} ${stretch.edge}`;
    if (!part || this.handedOn.has(on)) return undefined;
    return stretch.edge === 'start' || stretch.edge === 'top'
      ? this.layEnd(stretch, stretch.edge, part, on)
      : this.laySide(stretch, part, key, on);
  }

  private layEnd(stretch: Stretch, edge: 'start' | 'top', part: PlannedPart, on: string): Laid | undefined {
    const { stitches: all, width } = endOf(part, edge);
    const { from, to } = stretch.stitches ?? { from: 0, to: all };
    if (from < 0 || to > all || from > to) return undefined;
    const corner = (n: number) => (n === 0 ? `${on} right` : n === all ? `${on} left` : `${on} ${n}`);
    const stitches = to - from;
    return turnedRound({
      stretch,
      part,
      bits: [],
      on,
      from,
      to,
      rows: 0,
      stitches,
      mm: stitches * width,
      begin: corner(from),
      end: corner(to),
    });
  }

  private laySide(stretch: Stretch, part: PlannedPart, key: string, on: string): Laid | undefined {
    const all = this.sides.get(on) ?? [];
    const found = chosen(all, stretch) ?? idleAt(all, stretch, part);
    if (!found) return undefined;
    const [from, to] = found;
    const bits = all.slice(from, to);
    const corner = (n: number) =>
      n === 0
        ? `${key} start ${stretch.edge}`
        : n === all.length
          ? `${key} top ${stretch.edge}`
          : `${on} ${n}`;
    return turnedRound({
      stretch,
      part,
      bits,
      on,
      from,
      to,
      begin: corner(from),
      end: corner(to),
      ...measured(bits, isInner(part, stretch.edge)),
    });
  }

  /** Marks the stretch as used. False where some of it was used before. */
  use({ on, from, to }: Laid): boolean {
    const before = this.used.get(on) ?? [];
    this.used.set(on, [...before, [from, to]]);
    return !before.some(([a, b]) => Math.max(a, from) < Math.min(b, to));
  }

  /** What no joint has used. */
  rest(): Rest[] {
    return [...this.parts.entries()].flatMap(([key, part]) =>
      EDGES.flatMap((edge) => {
        const on = `${key} ${edge}`;
        if (this.handedOn.has(on)) return [];
        const length =
          edge === 'start' || edge === 'top' ? endOf(part, edge).stitches : (this.sides.get(on)?.length ?? 0);
        return gaps(this.used.get(on) ?? [], length).map(([from, to]): Rest => {
          const place = placeOf(key, edge);
          const rest = this.between(part, on, edge, from, to);
          const bits = this.sides.get(on);
          const stretch = bits ? restOfSide(bits, from, to) : restOfEnd(length, from, to);
          return { ...place, ...rest, stretch: stretch && { ...place, ...stretch } };
        });
      }),
    );
  }

  private between(part: PlannedPart, on: string, edge: Stretch['edge'], from: number, to: number): Measure {
    if (edge === 'right' || edge === 'left') return measured((this.sides.get(on) ?? []).slice(from, to));
    return { rows: 0, stitches: to - from, mm: (to - from) * endOf(part, edge).width };
  }
}

const keyOf = (piece: string, make: number, part: string): string => JSON.stringify([piece, make, part]);

function placeOf(key: string, edge: Stretch['edge']): Pick<Rest, 'piece' | 'make' | 'part' | 'edge'> {
  const [piece, make, part] = JSON.parse(key) as [string, number, string];
  return { piece, make, part, edge };
}

/** The side of a part that its parent's middle lies beside: of a neck. */
const isInner = ({ from }: PlannedPart, edge: Stretch['edge']): boolean =>
  'part' in from && (edge === 'right' || edge === 'left') && from.edge !== edge && from.edge !== 'middle';

const measured = (bits: readonly Bit[], isBesideLevel = false): Measure => ({
  rows: bits.filter(({ level }) => !level).length,
  stitches: bits.reduce((sum, { level, by }) => sum + (level ? Math.abs(by) : 0), 0),
  mm: lengthAlong(bits, isBesideLevel),
});

const turnedRound = (laid: Laid): Laid =>
  laid.stretch.reversed ? { ...laid, begin: laid.end, end: laid.begin } : laid;

function gaps(used: readonly (readonly [number, number])[], length: number): [number, number][] {
  const found: [number, number][] = [];
  let at = 0;
  for (const [from, to] of [...used].sort(([a], [b]) => a - b)) {
    if (from > at) found.push([at, from]);
    at = Math.max(at, to);
  }
  if (at < length) found.push([at, length]);
  return found;
}

/** A line laid: its stretches, and what they measure together. */
export interface LaidLine extends Measure {
  readonly laid: readonly Laid[];
  /** its corners; undefined where it has no stretch */
  readonly begin: string | undefined;
  readonly end: string | undefined;
}

/** Stretches one after the other; `missing` are those that are not there. */
export function layLine(all: Boundaries, line: Line): LaidLine & { readonly missing: readonly Stretch[] } {
  const found = line.map((stretch) => all.lay(stretch));
  const laid = found.filter((one) => one !== undefined);
  const sum = (of: keyof Measure) => laid.reduce((total, one) => total + one[of], 0);
  return {
    laid,
    begin: laid[0]?.begin,
    end: laid.at(-1)?.end,
    rows: sum('rows'),
    stitches: sum('stitches'),
    mm: mmOf(laid),
    missing: line.filter((_, i) => found[i] === undefined),
  };
}

/**
 * A slant that goes on from one part into the next is one slant: parts of one edge that lie above each other are measured
 * as one. What lies level by itself, as the middle of a neck, is no part of a slant.
 */
function mmOf(laid: readonly Laid[]): number {
  let mm = 0;
  let run: Bit[] = [];
  let last: Laid | undefined;
  let first: Laid | undefined;
  const flush = () => {
    if (run.length > 0 && first) mm += lengthAlong(run, isInner(first.part, first.stretch.edge));
    run = [];
  };
  for (const one of laid) {
    const isSide = one.stretch.edge === 'right' || one.stretch.edge === 'left';
    const goesOn = last?.stretch.edge === one.stretch.edge && last.stretch.level !== 'only';
    if (!isSide || !goesOn || last?.stretch.reversed || one.stretch.reversed) flush();
    if (isSide) {
      if (run.length === 0) first = one;
      run.push(...one.bits);
    }
    if (!isSide) mm += one.mm;
    last = one;
  }
  flush();
  return mm;
}
