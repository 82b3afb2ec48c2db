import { type Fault, fault } from '../../fault.ts';
import type { Item } from '../../row/read/notation.ts';
import type { Said, Statement } from '../say/statement.ts';
import { type Build, otherEdge, type PartBuild, type PieceBuild, startEdge } from './build/build.ts';
import { makeWrittenRow } from './build/make-row.ts';
import { isDone, neckOf, newPart, newPiece, setMark } from './build/part.ts';
import { nameless, pieceCalled, pieceInHand, startPending } from './build/piece-in-hand.ts';
import { MOST_STITCHES } from './build/push-row.ts';

/** Stitches are on the needle, and nothing says that another piece begins: whether at an edge or anew, nobody knows unless it is said. */
function castsOnWithin(build: Build, said: Said['begins']): PartBuild | undefined {
  const { part, pending, heading, title, recent } = build;
  if (part === undefined || isDone(part) || part.rows.length === 0) return undefined;
  const named = pending !== undefined || heading !== undefined || title !== undefined;
  const begins = said ? said === 'anew' : recent.some(({ statement }) => BEGIN_ANEW.has(statement.is));
  return named || begins ? undefined : part;
}

/** 'With 4 mm needles and A, cast on 30 sts', or at the end of something that was just said to be put away. */
const BEGIN_ANEW: ReadonlySet<Statement['is']> = new Set([
  'needle',
  'yarn',
  'heading',
  'hold',
  'bind off',
  'gauge',
]);

/** A row with so many more at the edge that is said; where none is, at the one where it begins, and it is told. */
function castOnBeside(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  stitches: number,
  begins: Said['begins'],
): Fault | undefined {
  const neck = neckOf(piece, part);
  const edge = begins === 'at neck' ? neck : begins === 'at armhole' ? otherEdge(neck) : startEdge(part);
  const more: Item = { is: 'stitches', work: 'co', times: stitches };
  const rest: Item = { is: 'stitches to', work: 'patt', goal: { left: 'what follows' } };
  const items = edge === startEdge(part) ? [more, rest] : [rest, more];
  return makeWrittenRow(build, part, items, 'groups') ?? (begins ? undefined : fault('place not known'));
}

export function doCastOn(build: Build, stitches: number, begins: Said['begins']): Fault | undefined {
  const live = Math.min(stitches, MOST_STITCHES);
  const within = castsOnWithin(build, begins);
  if (within && build.piece) return castOnBeside(build, build.piece, within, live, begins);
  build.defining = undefined;
  build.talk = false;
  startPending(build);
  const now = build.piece;
  // a second cast-on below the same heading starts something else
  const piece =
    now === undefined || (now.parts.length > 0 && isDone(build.part) && build.heading !== undefined)
      ? newPiece(build, build.heading ? pieceCalled(build.heading) : nameless)
      : pieceInHand(build);
  if (build.part && !isDone(build.part) && build.part.rows.length > 0) build.part.end = 'hold';
  if (piece.parts.length === 0) build.heading = undefined;
  const lead = build.recent.at(-1)?.statement;
  const led = lead?.is === 'yarn' ? lead.name : lead?.is === 'needle' ? lead.yarn : undefined;
  const part = newPart(build, piece, { name: 'body', from: { castOn: live }, live, firstSide: 'RS' });
  part.begunIn = led ?? build.begunIn;
  if (build.begunHeld) part.yarn = part.begunIn;
  part.yarn ??= build.strands;
  Object.assign(build, { begunIn: undefined, begunHeld: undefined });
  build.meanwhile = [];
  setMark(piece, 'start', build.part);
  return stitches > MOST_STITCHES ? fault('too many stitches', { stitches }) : undefined;
}
