import type { Flow } from '../say/flow.ts';
import type { EdgeName } from '../say/how-far.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build, PartBuild, PieceBuild, Track } from './build/build.ts';
import { isDone } from './build/part.ts';
import { targetOf } from './build/target.ts';
import type { Waits } from './build/track.ts';
import { isByLengths } from './by-lengths.ts';
import { trackOfGroups } from './groups.ts';
import { trackOf } from './shape.ts';

type After = Extract<Statement, { is: 'at the same time' }>['after'];

/** 'AT THE SAME TIME …' further on in the line, or at the head of the next, begins with this statement. */
export function joinMeanwhile(build: Build, flow: readonly Flow[], i: number, used: Set<number>): void {
  const here = flow[i] as Flow;
  for (let j = i + 1; j < Math.min(flow.length, i + 14); j += 1) {
    const next = flow[j] as Flow;
    const sameLine = next.line === here.line;
    const headOfNext = next.line === here.line + 1 && flow[j - 1]?.line !== next.line;
    if (next.is !== 'said' || !(sameLine || headOfNext)) return;
    if (next.said.statement.is === 'heading') return;
    if (next.said.statement.is !== 'at the same time' || used.has(j)) continue;
    if (next.said.within && j > i + 1) continue;
    const beside = besideFrom(flow, j + 1, here, next.said.within === true);
    if (startMeanwhile(build, beside, next.said.statement.after))
      for (let k = j; k <= j + beside.length; k += 1) used.add(k);
    if (headOfNext) return;
  }
}

/** What is done meanwhile: one shaping, or of what is bound off and shaped at that edge all of the sentence. */
function besideFrom(flow: readonly Flow[], from: number, here: Flow, one: boolean): Said[] {
  const beside: Said[] = [];
  const first = flow[from];
  for (let k = from; k < flow.length; k += 1) {
    const next = flow[k] as Flow;
    if (next.is !== 'said' || next.span !== first?.span) break;
    const edge = edgeOf(next.said.statement);
    if (edge === undefined || (one && beside.length > 0)) break;
    const before = beside[0] && edgeOf(beside[0].statement);
    const other = here.is !== 'said' || edgeOf(here.said.statement) !== before;
    if (before !== undefined && !(other && (edge === 'same' || edge === before))) break;
    beside.push(next.said);
  }
  return beside;
}

const edgeOf = (statement: Statement): EdgeName | undefined =>
  statement.is === 'shape' || statement.is === 'groups' ? statement.edge : undefined;

/** A shaping that goes on at the same time as what stands before it. */
export function startMeanwhile(build: Build, beside: readonly Said[], after: After): boolean {
  const { piece, part } = build;
  const [first] = beside;
  if (first === undefined || !piece || !part || isDone(part)) return false;
  const wait = after && after.is !== 'count' ? (targetOf(build, piece, part, after)?.rows ?? 0) : 0;
  const stitches = after?.is === 'count' && after.stitches !== part.live ? after.stitches : undefined;
  const waitFor = stitches === undefined ? undefined : { stitches, fewer: part.live > stitches };
  const track = chain(build, piece, part, beside, { wait, waitFor });
  if (track === undefined) return false;
  build.meanwhile.push(track);
  return true;
}

/** One after the other; undefined where any of them cannot be worked row by row. */
function chain(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  [first, ...rest]: readonly Said[],
  waits: Waits,
): Track | undefined {
  if (first === undefined || !goesBeside(build, part, first)) return undefined;
  const edge = edgeOf(first.statement);
  const [next, ...others] = rest;
  const statement = next && {
    ...next.statement,
    edge: edgeOf(next.statement) === 'same' ? edge : edgeOf(next.statement),
  };
  const following = next && [{ ...next, statement: statement as Statement }, ...others];
  if (following && !following.every((said) => goesBeside(build, part, said))) return undefined;
  const behind = following && (() => chain(build, piece, part, following, {}) as Track);
  build.line = first.line;
  return first.statement.is === 'groups'
    ? trackOfGroups(build, piece, part, first.statement, { ...waits, behind })
    : trackOf(build, piece, part, first.statement as Extract<Statement, { is: 'shape' }>, first.stated, {
        ...waits,
        behind,
      });
}

function goesBeside(build: Build, part: PartBuild, { statement }: Said): boolean {
  if (statement.is === 'groups')
    return !statement.byPurpose && statement.groups.every(({ toCount }) => toCount === undefined);
  return statement.is === 'shape' && !isByLengths(build, part, statement.beats);
}
