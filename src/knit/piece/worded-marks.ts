import { expandRow } from '../row/expand.ts';
import type { Side, Step } from '../row/step.ts';
import { stitchesNamed } from '../row/stitches-of-steps.ts';
import { type StitchName, stitches } from '../stitch.ts';
import { edgeFollowed } from './edge-stitch.ts';
import type { ShapingMark } from './planned.ts';
import { behindTurn } from './yarn-end.ts';

/**
 * Where a spelled-out row changes the count: at an edge when all of its changes lie within a few stitches of it,
 * across the row otherwise, as where a hole is bound off or cast on between stitches that are worked. `by` is what each place adds.
 */
export function marksOfSteps(steps: readonly Step[], before: number, side: Side): readonly ShapingMark[] {
  // most rows change nothing, and need not be walked for that
  if (!stitchesNamed(steps).some((work) => stitches[work].takes !== stitches[work].makes)) return [];
  const places = changesOf(steps, before);
  if (places.length === 0) return [];
  const [first, last] = side === 'RS' ? (['right', 'left'] as const) : (['left', 'right'] as const);
  const near = Math.min(EDGE_STITCHES, Math.max(1, Math.floor(before / 4)));
  const isHole = ({ at, takes, work }: Change): boolean =>
    work !== undefined && at > 0 && at + takes < before;
  const isEarly = (place: Change): boolean => place.at <= near;
  const isLate = (place: Change): boolean => place.at + place.takes >= before - near;
  // of a few stitches what lies near both edges belongs to the one that it follows
  const goesLast = (place: Change): boolean =>
    isLate(place) &&
    (!isEarly(place) || (place.stitch !== undefined && edgeFollowed(place.stitch, side) === last));
  const middle = places.filter(({ stitch }) => stitch === 's2kp' || stitch === 's2pp');
  const edges = places.filter((place) => !isHole(place) && !middle.includes(place));
  const late = edges.filter(goesLast);
  const early = edges.filter((place) => isEarly(place) && !late.includes(place));
  const sum = (list: readonly Change[]) => list.reduce((total, { by }) => total + by, 0);
  if (early.length + late.length + middle.length < places.length || areSpread(edges)) {
    const by = sum(places);
    return by === 0 ? [] : [{ kind: 'across', edge: 'across', by }];
  }
  const marks: ShapingMark[] = [];
  if (sum(early) !== 0) marks.push({ kind: kindOf(early), edge: first, by: sum(early) });
  marks.push(...middle.map(({ by }): ShapingMark => ({ kind: 'middle', edge: 'middle', by })));
  if (sum(late) !== 0) marks.push({ kind: kindOf(late), edge: last, by: sum(late) });
  return marks;
}

/** Two alike on a few stitches, as far from the edges as half of what lies between them: what is shaped at both edges is mirrored, or lies nearer to them. */
function areSpread([first, second, ...more]: readonly Change[]): boolean {
  if (!first || !second || more.length > 0) return false;
  const isAlike = first.stitch === second.stitch && first.work === undefined;
  return isAlike && first.at >= LEAST_SPREAD && second.at - first.at - first.takes <= 3 * first.at;
}

const LEAST_SPREAD = 2;

/** A row that ends before its last stitches turns there: they rest at the edge that it goes towards. */
export const turnsOfSteps = (steps: readonly Step[], before: number, side: Side): readonly ShapingMark[] =>
  behindTurn(steps, before) > 0 ? [{ kind: 'turn', edge: side === 'RS' ? 'left' : 'right', by: 0 }] : [];

/** Shaping further in than this is worked across the row for whoever looks at the drawing. */
const EDGE_STITCHES = 5;

interface Change {
  /** stitches worked before it */
  readonly at: number;
  readonly takes: number;
  readonly by: number;
  /** stitches bound off or cast on at once; else what it is called */
  readonly work?: 'bo' | 'co' | undefined;
  readonly stitch?: StitchName;
}

function changesOf(steps: readonly Step[], before: number): Change[] {
  const out: Change[] = [];
  let at = 0;
  for (const work of expandRow(steps, before)) {
    const { takes, makes } = stitches[work];
    const group = work === 'bo' || work === 'co' ? work : undefined;
    const last = out[out.length - 1];
    // a group bound off is one change, however many stitches it takes
    if (group !== undefined && last?.work === group && last.at + last.takes >= at) {
      out[out.length - 1] = { ...last, takes: last.takes + takes, by: last.by + makes - takes };
    } else if (takes !== makes) out.push({ at, takes, by: makes - takes, work: group, stitch: work });
    at += takes;
  }
  return out;
}

const kindOf = (list: readonly Change[]): 'edge' | 'bind off' | 'cast on' =>
  list.some(({ work }) => work === 'bo')
    ? 'bind off'
    : list.some(({ work }) => work === 'co')
      ? 'cast on'
      : 'edge';
