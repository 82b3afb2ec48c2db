import { addRun, type Run } from '../row/shorten.ts';
import type { Side } from '../row/step.ts';
import type { Edge } from './recipe.ts';
import { type TurnWay, turnFacts } from './turn-way.ts';

/** Where a row was turned that no later one has gone over: so many stitches lie between it and the edge. */
export interface Gap {
  readonly edge: Edge;
  readonly stitches: number;
  readonly way: TurnWay;
}

/** A row with what its turn asks for and what it says of the gaps that it goes over; and the gaps after it. */
export function withGaps(
  runs: readonly Run[],
  side: Side,
  gaps: readonly Gap[],
  turned: TurnWay | undefined,
): { readonly runs: readonly Run[]; readonly gaps: readonly Gap[] } {
  if (gaps.length === 0 && turned === undefined) return { runs, gaps };
  const [first, last]: readonly [Edge, Edge] = side === 'RS' ? ['right', 'left'] : ['left', 'right'];
  const begins = runs[0]?.work === 'unworked' ? runs[0].times : 0;
  const ends = runs.at(-1)?.work === 'unworked' && runs.length > 1 ? (runs.at(-1)?.times ?? 0) : 0;
  const isMet = ({ edge, stitches }: Gap): boolean => stitches > (edge === first ? begins : ends);
  const fromTurn = gaps.find(({ edge, stitches }) => edge === first && stitches === begins);
  const out: Run[] = [];
  if (begins > 0) addRun(out, 'unworked', begins);
  addWorked(out, runs.slice(begins > 0 ? 1 : 0, ends > 0 ? -1 : undefined), fromTurn?.way);
  for (const way of new Set(gaps.filter(isMet).map((gap) => gap.way))) addRun(out, turnFacts(way).closes, 1);
  const before = turned && turnFacts(turned).before;
  if (before) addRun(out, before, 1);
  addRun(out, 'unworked', ends);
  const open = gaps.filter((gap) => !isMet(gap));
  return {
    runs: out,
    gaps: turned && ends > 0 ? [...open, { edge: last, stitches: ends, way: turned }] : open,
  };
}

/** After a turn the first stitch is worked as its way asks, where it is one by itself. */
function addWorked(out: Run[], worked: readonly Run[], way: TurnWay | undefined): void {
  const after = way && turnFacts(way).after;
  const [head, ...rest] = worked;
  if (after === undefined || head === undefined || !/^[kp]$/.test(head.work)) {
    for (const { work, times } of worked) addRun(out, work, times);
    return;
  }
  addRun(out, after, 1);
  addRun(out, head.work, head.times - 1);
  for (const { work, times } of rest) addRun(out, work, times);
}
