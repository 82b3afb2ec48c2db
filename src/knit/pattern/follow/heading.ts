import type { FabricName } from '../../fabric.ts';
import { type Fault, fault } from '../../fault.ts';
import type { FabricSaid, Statement } from '../say/statement.ts';
import type { Build, PieceBuild } from './build/build.ts';
import { fabricOf, nominal } from './build/fabric.ts';
import { MOST_STITCHES } from './build/make-row.ts';
import { isDone, newPart, newPiece, setMark } from './build/part.ts';

const TALK =
  /^(finishing|materials|abbreviations|measurements|notes?|needles|yarn|making|makeup|assembly|blocking|pressing|general|tips|equipment|supplies|terms|schematic|level|special|to (make|finish)|instructions|directions)\b/;
const PLACES: readonly (readonly [RegExp, string])[] = [
  [/armhole|underarm/, 'armhole'],
  [/raglan/, 'raglan'],
  [/shoulder/, 'shoulder'],
  [/neck|\bv\b/, 'neck'],
  [/cap|sleeve top|top/, 'cap'],
  [/waist/, 'waist'],
];

/** 'BACK', 'Sleeves (make 2)', 'Shape armholes', 'Finishing'. */
export function doHeading(build: Build, said: Extract<Statement, { is: 'heading' }>): void {
  const { words } = said;
  build.defining = undefined;
  build.talk = TALK.test(words);
  if (said.piece && !isPlaceOnly(words, build)) {
    build.pending = said.piece;
    build.title = '';
    build.heading = '';
    if (isDone(build.part) && !(build.piece && build.piece.resting.length > 0)) startPending(build);
    else if (build.piece && build.part) {
      build.part.closed = true;
      setMark(build.piece, 'heading', build.part);
    }
    return;
  }
  build.heading = words;
  const { piece, part } = build;
  if (!piece || !part) return;
  part.closed = true;
  for (const [pattern, place] of PLACES) if (pattern.test(words)) setMark(piece, place, part);
  setMark(piece, 'heading', part);
  setMark(piece, 'section', part);
}

/** The piece that the last heading named begins with its own stitches. */
export function startPending(build: Build): PieceBuild | undefined {
  const { pending, title } = build;
  build.pending = undefined;
  build.title = '';
  if (pending) return newPiece(build, pending.name, pending.makes);
  return title === '' ? undefined : newPiece(build, title, 1);
}

/** 'Left side' while a piece is in work is no piece of its own. */
const isPlaceOnly = (words: string, build: Build): boolean =>
  /\b(side|half|shoulder)$/.test(words) && build.piece !== undefined;

const firstWord = (name: string): string => name || 'piece';

/** The piece in hand; without a heading the text's first piece has no name of its own. */
export function pieceInHand(build: Build): PieceBuild {
  return build.piece ?? startPending(build) ?? newPiece(build, firstWord(''), 1);
}

export function doCastOn(build: Build, stitches: number): Fault | undefined {
  const live = Math.min(stitches, MOST_STITCHES);
  build.defining = undefined;
  build.talk = false;
  startPending(build);
  const now = build.piece;
  // a second cast-on below the same heading starts something else
  const piece =
    now === undefined || (now.parts.length > 0 && isDone(build.part) && build.heading !== '')
      ? newPiece(build, firstWord(build.heading), 1)
      : pieceInHand(build);
  if (build.part && !isDone(build.part) && build.part.rows.length > 0) build.part.end = 'hold';
  if (piece.parts.length === 0) build.heading = '';
  newPart(build, piece, { name: 'body', from: { castOn: live }, live, firstSide: 'RS' });
  build.meanwhile = [];
  setMark(piece, 'start', build.part);
  return stitches > MOST_STITCHES ? fault('too many stitches', { stitches }) : undefined;
}

export function doPickUp(build: Build, said: Extract<Statement, { is: 'pick up' }>): Fault | undefined {
  build.defining = undefined;
  build.talk = false;
  startPending(build);
  if (build.part && !isDone(build.part) && build.part.rows.length > 0) build.part.end = 'hold';
  const piece =
    build.piece === undefined || (build.piece.parts.length > 0 && build.heading !== '')
      ? newPiece(build, build.heading || 'band', 1)
      : build.piece;
  const { edges } = said;
  const live = edges.reduce((sum, edge) => sum + edge.stitches, 0);
  if (live > MOST_STITCHES) return fault('too many stitches', { stitches: live });
  newPart(build, piece, {
    name: piece.parts.length === 0 ? 'body' : 'band',
    from: { pickUp: edges.filter((edge) => edge.stitches > 0) },
    live,
    firstSide: 'WS',
  });
  setMark(piece, 'marker', build.part);
  setMark(piece, 'heading', build.part);
  return undefined;
}

export function doGauge(build: Build, said: Extract<Statement, { is: 'gauge' }>): void {
  if (said.stitches === undefined && said.rows === undefined) return;
  const { stitches = build.gauge?.stitches, rows = build.gauge?.rows } = said;
  if (stitches === undefined || rows === undefined || stitches <= 0 || rows <= 0) {
    build.gaugeBegun = said;
    return;
  }
  const fabric = said.fabric ? fabricOfGaugeLine(said.fabric, build) : build.gauge?.fabric;
  const needle = said.needle ?? build.gauge?.needle;
  build.gauge = {
    stitches,
    rows,
    ...(fabric === undefined ? {} : { fabric }),
    ...(needle === undefined ? {} : { needle }),
  };
  build.gaugeInPattern = said.fabric?.is === 'pattern' || (!said.fabric && build.gaugeInPattern);
}

/** The fabric that the line names; none where it was counted in a pattern of the text's own. */
function fabricOfGaugeLine(said: FabricSaid, build: Build): FabricName | undefined {
  if (said.is !== 'rib' && !(said.is === 'named' && said.name !== 'knit on')) return undefined;
  const known = fabricOf(said, build, undefined);
  return known && nominal(known);
}

/** '5 sts = 1 inch' may stand in one sentence and '7 rows = 1 inch' in the next. */
export function joinGauge(
  build: Build,
  said: Extract<Statement, { is: 'gauge' }>,
): Extract<Statement, { is: 'gauge' }> {
  return { ...build.gaugeBegun, ...said };
}

export function doMultiple(build: Build, said: Extract<Statement, { is: 'multiple' }>): void {
  const name = said.name || build.heading || 'pattern';
  const pattern = {
    name,
    of: said.of,
    plus: said.plus,
    rows: new Map(),
    everyOther: undefined,
    lines: new Map(),
    stated: true,
  };
  build.patterns.set(name, pattern);
  build.defining = pattern;
}

/** Rows before any cast-on define a stitch pattern called as the heading above them. */
export function definingHere(build: Build): NonNullable<Build['defining']> {
  const name =
    build.heading
      .replace(/\b(pattern stitch|stitch pattern|pattern|patt|stitch|st)\b/g, ' ')
      .replace(/\s+/g, ' ')
      .trim() ||
    build.piece?.name ||
    'pattern';
  const known = build.patterns.get(name);
  const pattern = known ?? {
    name,
    of: 1,
    plus: 0,
    rows: new Map(),
    everyOther: undefined,
    lines: new Map(),
    stated: false,
  };
  build.patterns.set(name, pattern);
  build.defining = pattern;
  return pattern;
}
