import type { Break, Consequence } from './break.ts';
import { roomAlong, type Trouble, type WorkedJoint } from './work-making-up.ts';

/** A joint with what the judge says of it. */
export interface JudgedJoint {
  readonly worked: WorkedJoint;
  readonly troubles: readonly Trouble[];
}

/** A band's rib takes this much without a ruffle: below it nothing is said. Common practice, no published source. */
const SAID_FROM_STITCHES = 3;

/** Edges of a band that have room for another number than is picked up there, since they are longer or shorter than before. */
export function pickUps(key: string, then: JudgedJoint, is: JudgedJoint, band: string): Break[] {
  const { joint } = is.worked;
  if (joint.kind !== 'pick up') return [];
  return joint.along.flatMap(({ stitches }, along): Break[] => {
    const [a, b] = [then.worked.lines[along], is.worked.lines[along]];
    const [had, has] = [a && roomAlong(a), b && roomAlong(b)];
    if (!a || !b || !had || !has) return [];
    const was = pickUpTrouble(then, along);
    const now = pickUpTrouble(is, along);
    const longerMm = b.mm - a.mm;
    const told = (fit: number): Break[] => {
      const what: Consequence = { kind: 'pick up', band, along, stitches, fit, longerMm };
      return [{ key: `${key} ${along}`, what, worked: is.worked }];
    };
    // what rests on a holder is counted: the judge lets no stitch more or fewer pass
    if (Math.abs(has - had) < SAID_FROM_STITCHES) return now && !was ? told(now.fit) : [];
    const before =
      then.worked.joint.kind === 'pick up' ? then.worked.joint.along[along]?.stitches : undefined;
    const fit = now?.isExact ? now.fit : Math.round(((before ?? stitches) * has) / had);
    return Math.abs(stitches - fit) < SAID_FROM_STITCHES && !now?.isExact ? [] : told(fit);
  });
}

const pickUpTrouble = ({ troubles }: JudgedJoint, along: number) =>
  troubles.flatMap((one) => (one.kind === 'pick up' && one.along === along ? [one] : []))[0];
