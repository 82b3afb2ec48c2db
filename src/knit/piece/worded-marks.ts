import { expandRow } from '../row/expand.ts';
import type { Side, Step } from '../row/step.ts';
import { stitches } from '../stitch.ts';
import type { ShapingMark } from './planned.ts';
import { behindTurn } from './yarn-end.ts';

/**
 * Where a spelled-out row changes the count: at an edge when all of its changes lie within a few stitches of it,
 * across the row otherwise, as where a hole is bound off or cast on between stitches that are worked. `by` is what each place adds.
 */
export function marksOfSteps(steps: readonly Step[], before: number, side: Side): readonly ShapingMark[] {
  const places = changesOf(steps, before);
  if (places.length === 0) return [];
  const near = Math.min(EDGE_STITCHES, Math.floor(before / 4));
  const isHole = ({ at, takes, work }: Change): boolean => work !== 'other' && at > 0 && at + takes < before;
  const early = places.filter((place) => !isHole(place) && place.at <= near);
  const late = places.filter(
    (place) => !isHole(place) && place.at > near && place.at + place.takes >= before - near,
  );
  const sum = (list: readonly Change[]) => list.reduce((total, { by }) => total + by, 0);
  if (early.length + late.length < places.length) {
    const by = sum(places);
    return by === 0 ? [] : [{ kind: 'across', edge: 'across', by }];
  }
  const [first, last] = side === 'RS' ? (['right', 'left'] as const) : (['left', 'right'] as const);
  const marks: ShapingMark[] = [];
  if (sum(early) !== 0) marks.push({ kind: kindOf(early), edge: first, by: sum(early) });
  if (sum(late) !== 0) marks.push({ kind: kindOf(late), edge: last, by: sum(late) });
  return marks;
}

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
  readonly work: 'bo' | 'co' | 'other';
}

function changesOf(steps: readonly Step[], before: number): Change[] {
  const out: Change[] = [];
  let at = 0;
  for (const work of expandRow(steps, before)) {
    const { takes, makes } = stitches[work];
    const group = work === 'bo' || work === 'co' ? work : 'other';
    const last = out[out.length - 1];
    // a group bound off is one change, however many stitches it takes
    if (group !== 'other' && last?.work === group && last.at + last.takes >= at) {
      out[out.length - 1] = { ...last, takes: last.takes + takes, by: last.by + makes - takes };
    } else if (takes !== makes) out.push({ at, takes, by: makes - takes, work: group });
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
