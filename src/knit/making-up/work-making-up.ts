import type { StandingGarment } from '../piece/standing.ts';
import { Boundaries, type Laid, type LaidLine, layLine, type Rest } from './boundary-of.ts';
import type { Along, Joint, Line, SeamKind, Stretch } from './joint.ts';

/** Why a joint cannot be, and where. */
export type Trouble =
  | { readonly kind: 'no such edge'; readonly joint: number; readonly at: Stretch }
  /** the line goes on where the one before it does not end: what would join them is not sewn */
  | { readonly kind: 'not there yet'; readonly joint: number; readonly at: Stretch; readonly after: Stretch }
  | { readonly kind: 'used twice'; readonly joint: number; readonly at: Stretch }
  | {
      readonly kind: 'do not meet';
      readonly joint: number;
      readonly unit: SeamUnit;
      /** the line that is judged, and what it is joined to (its ease reckoned in) */
      readonly first: number;
      readonly second: number;
    }
  /** a band picks up more or fewer than lie along the edge */
  | {
      readonly kind: 'pick up';
      readonly joint: number;
      readonly along: number;
      readonly stitches: number;
      readonly fit: number;
      /** they rest on a holder */
      readonly isExact?: true;
    }
  | { readonly kind: 'forgotten'; readonly rest: Rest };

export type SeamUnit = 'stitches' | 'rows' | 'mm';

/** A joint that was worked, with what its lines measure. */
export interface WorkedJoint {
  readonly joint: Joint;
  /** the lines of a seam, the one line that is left free, those of a pick-up */
  readonly lines: readonly LaidLine[];
}

export interface WorkedMakingUp {
  readonly worked: readonly WorkedJoint[];
  readonly troubles: readonly Trouble[];
}

/** What a seam is held against: shoulders stitch to stitch, sides row to row, what curves by its length. */
export const unitOf: Readonly<Record<SeamKind, SeamUnit>> = {
  shoulder: 'stitches',
  underarm: 'stitches',
  side: 'rows',
  sleeve: 'rows',
  raglan: 'rows',
  band: 'rows',
  lap: 'rows',
  armhole: 'mm',
  other: 'mm',
};

/** Works the joints one after the other, as they would be sewn, and notes what cannot be. At the end no edge is left over. */
export function workJoints(
  joints: readonly Joint[],
  garment: Pick<StandingGarment, 'pieces'>,
): WorkedMakingUp {
  const hand = new Hand(garment);
  const worked = joints.map((joint, i) => hand.work(joint, i));
  const left = hand.edges.rest().map((rest): Trouble => ({ kind: 'forgotten', rest }));
  return { worked, troubles: [...hand.troubles, ...left] };
}

/** Sews. */
class Hand {
  readonly edges: Boundaries;
  readonly troubles: Trouble[] = [];
  private joint = 0;

  constructor(garment: Pick<StandingGarment, 'pieces'>) {
    this.edges = new Boundaries(garment);
  }

  work(joint: Joint, index: number): WorkedJoint {
    this.joint = index;
    switch (joint.kind) {
      case 'left free':
        return { joint, lines: [this.take(joint.line)] };
      case 'pick up':
        return this.pickUp(joint);
      case 'seam': {
        const lines = [this.take(joint.a), this.take(joint.b)] as const;
        this.sew(joint, ...lines);
        return { joint, lines };
      }
    }
  }

  private sew(joint: Extract<Joint, { kind: 'seam' }>, a: LaidLine, b: LaidLine): void {
    const unit = unitOf[joint.of];
    const second = b[unit] * (1 + (joint.ease ?? 0) / 100);
    const isWhole =
      joint.of !== 'lap' && a.laid.length === joint.a.length && b.laid.length === joint.b.length;
    if (isWhole && Math.abs(a[unit] - second) > toleranceOf(unit, a, b))
      this.troubles.push({ kind: 'do not meet', joint: this.joint, unit, first: a[unit], second });
    if (a.begin && b.begin) this.edges.ties.tie(a.begin, b.begin);
    if (a.end && b.end) this.edges.ties.tie(a.end, b.end);
  }

  private pickUp(joint: Extract<Joint, { kind: 'pick up' }>): WorkedJoint {
    const { piece, make } = joint;
    const part = this.edges.pickedUpIn(piece, make);
    const from = part?.from;
    const planned = from && 'pickUp' in from ? from.pickUp : [];
    // the band's plan may have changed since the joint was stated; the second armhole is gone round the other way
    const inOrder = make === 2 ? [...planned].reverse() : planned;
    const along = joint.along.map((one, i) => ({ ...one, stitches: inOrder[i]?.stitches ?? one.stitches }));
    const lines = along.map(({ line }) => this.take(line));
    const laid = lines.flatMap((line) => line.laid);
    this.follow(laid);
    const start = this.take([{ piece, make, part: part?.name ?? piece, edge: 'start' }]);
    for (const [i, one] of along.entries()) this.fits(i, one, lines[i], inOrder[i]?.held === true);
    const [first, last] = [laid[0], laid.at(-1)];
    if (start.begin && start.end && first && last) {
      this.edges.ties.tie(start.begin, first.begin);
      this.edges.ties.tie(start.end, last.end);
    }
    return { joint: { ...joint, along }, lines };
  }

  /** One stitch for each that lies level, and as many along the rest as its length has room for, or the share of it that is meant. */
  private fits(
    index: number,
    { stitches, percent = 100 }: Along,
    line: LaidLine | undefined,
    isHeld: boolean,
  ): void {
    const whole = line && roomAlong(line);
    if (whole === undefined) return;
    const room = (whole * percent) / 100;
    if (Math.abs(stitches - room) > (isHeld ? HELD_OFF : Math.max(LEAST_OFF, PICK_UP_OFF * room)))
      this.troubles.push({
        kind: 'pick up',
        joint: this.joint,
        along: index,
        stitches,
        fit: Math.round(room),
        ...(isHeld ? { isExact: true } : {}),
      });
  }

  private take(line: Line): LaidLine {
    const found = layLine(this.edges, line);
    for (const at of found.missing) this.troubles.push({ kind: 'no such edge', joint: this.joint, at });
    this.follow(found.laid);
    for (const one of found.laid) {
      if (!this.edges.use(one))
        this.troubles.push({ kind: 'used twice', joint: this.joint, at: one.stretch });
    }
    return found;
  }

  private follow(laid: readonly Laid[]): void {
    for (const [i, one] of laid.entries()) {
      const before = laid[i - 1];
      if (before === undefined || this.edges.ties.meet(before.end, one.begin)) continue;
      const { joint } = this;
      this.troubles.push({ kind: 'not there yet', joint, at: one.stretch, after: before.stretch });
    }
  }
}

/** A band may pick up so much more or less than lies along an edge: its rib is made to fit. Common practice, no published source. */
const PICK_UP_OFF = 0.15;
const LEAST_OFF = 5;
/** What rests on a holder is taken up stitch by stitch. */
const HELD_OFF = 0.5;

/** Stitches that an edge has room for; undefined for an edge that is only a point. */
export function roomAlong({ laid, mm }: Pick<LaidLine, 'laid' | 'mm'>): number | undefined {
  // a band is picked up in the panel's own stitch, also along the rib of another band that the line goes on over
  const width = Math.max(0, ...laid.map((one) => cellAlong({ laid: [one] }).width));
  return width === 0 ? undefined : mm / width;
}

/** A stitch and a row of the fabric that most of the line lies along, mm. */
function cellAlong({ laid }: Pick<LaidLine, 'laid'>): { readonly width: number; readonly height: number } {
  const [longest] = [...laid].sort((a, b) => b.mm - a.mm);
  if (!longest) return { width: 0, height: 0 };
  const { cells, rows } = longest.part;
  // a beginning lies in the first rows, a top in the last
  const section = longest.bits.at(-1)?.row ?? (longest.stretch.edge === 'start' ? 1 : rows.length);
  return cells[rows[section - 1]?.section ?? 0] ?? cells[0] ?? { width: 0, height: 0 };
}

/** Stitches and rows that are counted meet exactly; lengths to a row and a stitch of either edge. */
function toleranceOf(unit: SeamUnit, a: LaidLine, b: LaidLine): number {
  if (unit !== 'mm') return 0;
  return [a, b].map(cellAlong).reduce((sum, { width, height }) => sum + width + height, 0);
}
