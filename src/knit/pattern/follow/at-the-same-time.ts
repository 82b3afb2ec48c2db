import type { Flow } from '../say/flow.ts';
import type { Said, Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';
import { isDone } from './build/part.ts';
import { targetOf } from './build/target.ts';
import { isByLengths } from './by-lengths.ts';
import { trackOf } from './shape.ts';

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
    const shape = flow[j + 1];
    if (shape?.is === 'said' && startMeanwhile(build, shape.said, next.said.statement.after)) {
      used.add(j);
      used.add(j + 1);
    }
    if (headOfNext) return;
  }
}

/** A shaping that goes on at the same time as what stands before it. */
export function startMeanwhile(
  build: Build,
  said: Said,
  after: Extract<Statement, { is: 'at the same time' }>['after'],
): boolean {
  const { piece, part } = build;
  if (said.statement.is !== 'shape' || !piece || !part || isDone(part)) return false;
  if (isByLengths(build, part, said.statement.beats)) return false;
  const wait = after && after.is !== 'count' ? (targetOf(build, piece, part, after)?.rows ?? 0) : 0;
  build.line = said.line;
  build.meanwhile.push(trackOf(build, piece, part, said.statement, said.stated, wait));
  return true;
}
