import type { StandingGarment } from '../piece/standing.ts';
import type { LaidLine } from './boundary-of.ts';
import type { Joint, SeamKind } from './joint.ts';
import { joined } from './making-up.ts';
import { roomAlong, type SeamUnit, unitOf, type WorkedJoint } from './work-making-up.ts';

/** What a change breaks, edge by edge, and what would mend it. */
export type Consequence =
  /** two edges met and do so no more */
  | {
      readonly kind: 'seam';
      readonly of: SeamKind;
      readonly unit: SeamUnit;
      /** the changed edge, and what it is sewn to */
      readonly piece: string;
      readonly to: string;
      readonly was: number;
      readonly now: number;
      readonly other: number;
      /** how much longer (> 0) than the other it is now, mm */
      readonly longerMm: number;
    }
  /** two makes of a piece that are worn as a pair were alike and are so no more; rows of their seams */
  | {
      readonly kind: 'pair';
      readonly piece: string;
      readonly was: number;
      readonly now: number;
      readonly other: number;
    }
  /** an edge has room for another number of stitches than is picked up there; `along` is the pick-up's place in its band */
  | {
      readonly kind: 'pick up';
      readonly band: string;
      readonly along: number;
      readonly stitches: number;
      readonly fit: number;
      /** how much longer the edge is than before, mm */
      readonly longerMm: number;
    };

/** A band's rib takes this much without a ruffle: below it nothing is said. Common practice, no published source. */
const SAID_FROM_STITCHES = 3;

/**
 * What a change of plans breaks in the making up: every joint of the garment before and after it. What did not meet
 * before is not told.
 */
export function consequences(
  before: Pick<StandingGarment, 'pieces' | 'joints'>,
  after: Pick<StandingGarment, 'pieces' | 'joints'>,
): readonly Consequence[] {
  const [was, is] = [byName(joined(before).worked), byName(joined(after).worked)];
  const found: Consequence[] = [...pairs([...was.values()], [...is.values()])];
  for (const [name, now] of is) {
    const then = was.get(name);
    if (!then) continue;
    if (now.joint.kind === 'seam') found.push(...seam(then, now, now.joint));
    if (now.joint.kind === 'pick up') found.push(...pickUps(then, now, now.joint));
  }
  return alike(found);
}

/** Joints by what they join: proposed anew after a change, they stand in the same order. */
function byName(worked: readonly WorkedJoint[]): ReadonlyMap<string, WorkedJoint> {
  const names = new Map<string, WorkedJoint>();
  for (const one of worked) {
    const { joint } = one;
    if (joint.kind === 'left free') continue;
    const lines = joint.kind === 'seam' ? [joint.a, joint.b] : joint.along.map(({ line }) => line);
    const joins = lines.map((line) => line.map(({ piece, make, edge }) => [piece, make, edge]).slice(0, 1));
    const base = JSON.stringify([joint.kind, joint.kind === 'seam' ? joint.of : joint.piece, joins]);
    const same = [...names.keys()].filter((known) => known.startsWith(base)).length;
    names.set(`${base} ${same}`, one);
  }
  return names;
}

function seam(then: WorkedJoint, now: WorkedJoint, joint: Extract<Joint, { kind: 'seam' }>): Consequence[] {
  const [[a0, b0], [a1, b1]] = [then.lines, now.lines];
  if (!a0 || !b0 || !a1 || !b1) return [];
  const unit = unitOf[joint.of];
  const met = (a: LaidLine, b: LaidLine) => Math.abs(a[unit] - b[unit]) <= tolerance(unit, b);
  if (!met(a0, b0) || met(a1, b1)) return [];
  const isFirst = Math.abs(a1[unit] - a0[unit]) >= Math.abs(b1[unit] - b0[unit]);
  const [was, changed, other] = isFirst ? [a0, a1, b1] : [b0, b1, a1];
  return [
    {
      kind: 'seam',
      of: joint.of,
      unit,
      piece: pieceOf(changed),
      to: pieceOf(other),
      was: was[unit],
      now: changed[unit],
      other: other[unit],
      longerMm: changed.mm - other.mm,
    },
  ];
}

/** Sleeves are worn as a pair: the rows of their own seams. */
function pairs(was: readonly WorkedJoint[], is: readonly WorkedJoint[]): Consequence[] {
  const rows = (worked: readonly WorkedJoint[]) =>
    worked.flatMap(({ joint, lines: [line] }) =>
      joint.kind === 'seam' && joint.of === 'sleeve' && line ? [line] : [],
    );
  const [[one0, two0], [one1, two1]] = [rows(was), rows(is)];
  if (!one0 || !two0 || !one1 || !two1) return [];
  if (one0.rows !== two0.rows || one1.rows === two1.rows) return [];
  const [now, other] = one1.rows === one0.rows ? [two1.rows, one1.rows] : [one1.rows, two1.rows];
  return [{ kind: 'pair', piece: pieceOf(one1), was: one0.rows, now, other }];
}

/** A sleeve and an armhole may differ by so much and still be sewn in; common practice, no published source. */
const SEWN_IN = 0.08;

const tolerance = (unit: SeamUnit, { mm }: LaidLine): number => (unit === 'mm' ? SEWN_IN * mm : 0);

const pieceOf = ({ laid }: LaidLine): string => laid[0]?.stretch.piece ?? '';

function pickUps(
  then: WorkedJoint,
  now: WorkedJoint,
  joint: Extract<Joint, { kind: 'pick up' }>,
): Consequence[] {
  return joint.along.flatMap(({ stitches }, along): Consequence[] => {
    const [a, b] = [then.lines[along], now.lines[along]];
    const [had, has] = [a && roomAlong(a), b && roomAlong(b)];
    if (!a || !b || !had || !has || Math.abs(has - had) < SAID_FROM_STITCHES) return [];
    const fit = Math.round((stitches * has) / had);
    return [{ kind: 'pick up', band: joint.piece, along, stitches, fit, longerMm: b.mm - a.mm }];
  });
}

/** Both sides of a body break alike: what is the same is told once. */
const alike = (found: readonly Consequence[]): readonly Consequence[] => [
  ...new Map(found.map((one) => [JSON.stringify(one), one])).values(),
];
