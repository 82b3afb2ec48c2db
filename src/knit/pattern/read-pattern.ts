import { type Fault, fault, type Result } from '../fault.ts';
import type { MeasuredGauge } from '../measured-gauge.ts';
import { plan } from '../piece/plan.ts';
import type { Plan } from '../piece/planned.ts';
import type { Recipe } from '../piece/recipe.ts';
import type { Build, PieceBuild } from './follow/build/build.ts';
import { checkPattern, type ReadStitchPattern } from './follow/build/check-pattern.ts';
import { freshBuild } from './follow/build/fresh-build.ts';
import { resolveGap } from './follow/build/gap.ts';
import { hangsOn } from './follow/build/hangs-on.ts';
import { type CountedBy, freshNotes, type LineNotes } from './follow/build/notes.ts';
import { isDone } from './follow/build/part.ts';
import { recipeOf } from './follow/build/to-recipe.ts';
import { runFlow } from './follow/flow.ts';
import { closePiece } from './follow/other-side.ts';
import { flushCycle } from './follow/row.ts';
import { slipFirst } from './follow/slips.ts';
import { tellWaiting } from './follow/waiting.ts';
import { type MadeByLine, madeByLine } from './made-by-line.ts';
import type { ReadLine, ReadRow } from './read-line.ts';
import { type Flow, flowOf, tokensOfLines } from './say/flow.ts';
import { logicalLines } from './text/lines.ts';
import { headingLine } from './text/size-line.ts';
import { sizeNames } from './text/size-names.ts';
import { sizesSaid } from './text/size-scope.ts';
import { countSizes } from './text/sizes.ts';

export type { ReadLine, ReadRow } from './read-line.ts';

export interface ReadOptions {
  /** which size, counting from 0; the first one unless said */
  readonly size?: number;
  /** the knitter's own gauge goes before the text's */
  readonly gauge?: MeasuredGauge;
  /** rows she counted for stretches given as lengths, by the stretch's id */
  readonly stretches?: Readonly<Record<string, number>>;
  /** needle until the text names one, mm */
  readonly needle?: number;
}

export interface ReadPiece {
  readonly recipe: Recipe;
  readonly plan: Result<Plan>;
  /** lines that say something of it: indices into `lines` */
  readonly lines: readonly number[];
}

/** A pattern's text as it was understood. */
export interface ReadPattern {
  /** names of the sizes; one nameless size where the text has no lists */
  readonly sizes: readonly string[];
  readonly size: number;
  /** the gauge that was used, if any */
  readonly gauge?: MeasuredGauge;
  readonly lines: readonly ReadLine[];
  readonly pieces: readonly ReadPiece[];
  /** stitch patterns that the text defines */
  readonly patterns: readonly ReadStitchPattern[];
}

/** Longest text read, in characters; a whole book of patterns is cut here. */
export const LONGEST_TEXT = 400_000;

/**
 * Reads the text of a pattern: every line with the rows it makes and the count after it, every count that the text
 * states compared, every piece as a recipe and a plan. It never throws; what it does not understand it marks.
 */
export function readPattern(text: string, options: ReadOptions = {}): ReadPattern {
  const lines = logicalLines(text.slice(0, LONGEST_TEXT));
  const tokens = tokensOfLines(lines);
  const counted = countSizes(tokens.filter((_, i) => !namesRanges(lines[i]?.text ?? '')));
  const named = sizeNames(
    lines.map((line) => line.text),
    counted,
  );
  // the lists of numbers know better than a line of measurements in two units
  const sizes = counted > 1 ? counted : Math.max(1, named.length);
  const size = Math.min(Math.max(0, Math.floor(options.size ?? 0)), sizes - 1);
  const names =
    named.length >= sizes
      ? named.slice(0, sizes)
      : Array.from({ length: sizes }, (_, i) => (sizes === 1 ? '' : String(i + 1)));
  const flow: Flow[] = [];
  const odd: { readonly at: number; readonly fault: Fault }[] = [];
  const said = tokens.map((line) => (sizes > 1 ? sizesSaid(line, names) : undefined));
  const of = { size, sizes, names, said };
  let scope: readonly number[] | undefined;
  lines.forEach((line, i) => {
    const read = flowOf(line, i, tokens[i] ?? [], of, scope);
    scope = read.scope;
    for (const one of read.flow) flow.push(one);
    // '6-9 (9-12, 12-18) months' names the sizes and is no list of numbers
    if (headingLine(line.text) === undefined)
      for (const { line: at, column } of read.odd) odd.push({ at: i, fault: oddList(at, column, sizes) });
  });
  const { build, notes } = followed(options, flow, () => {
    const fresh = lines.map(freshNotes);
    for (const { at, fault: found } of odd) fresh[at]?.faults.push(found);
    return fresh;
  });
  const patterns = [...build.patterns.values()]
    .filter((pattern) => pattern.rows.size > 0 && pattern.lines.size > 0)
    .map((pattern) => checkPattern(pattern, tellAt(lines, notes)));
  const rows = madeByLine(build);
  const hangs = hangsOn(build);
  return {
    sizes: names,
    size,
    ...(build.gauge === undefined ? {} : { gauge: build.gauge }),
    lines: lines.map((line, i) => readLine(line, notes[i] as LineNotes, rows, hangs)),
    pieces: piecesOf(build, lines),
    patterns,
  };
}

/** A count stated late closes the gap of a sentence before it; one more reading may close another. */
const MOST_READINGS = 4;

/** Knitted on paper, again for as long as counts turn up that were missing before them. */
function followed(options: ReadOptions, flow: readonly Flow[], freshly: () => LineNotes[]) {
  let known: ReadonlyMap<object, CountedBy> = new Map();
  for (let reading = 1; ; reading += 1) {
    const counts = { known, found: new Map<object, CountedBy>(), again: reading < MOST_READINGS };
    const build = freshBuild({ ...options, counts });
    const notes = freshly();
    const said = runFlow(build, flow, notes, options.gauge !== undefined);
    if (build.piece) finish(build, build.piece);
    if (counts.found.size === 0) {
      slipFirst(build);
      tellWaiting(build, said, notes);
      return { build, notes };
    }
    known = new Map([...known, ...counts.found]);
  }
}

/** 'Sizes 6-9 (9-12, 12-18) months': its numbers are names. */
const namesRanges = (text: string): boolean => /^\s*\d+\s?[-–/]\s?\d+\s*[([]/.test(headingLine(text) ?? '');

const oddList = (line: number, column: number, sizes: number): Fault =>
  fault('sizes differ', { sizes }, { line, column });

function finish(build: Build, piece: PieceBuild): void {
  const { part } = build;
  if (part && !isDone(part)) {
    const now = part.gap ? resolveGap(build, piece, part) : part;
    flushCycle(build, piece, now);
  }
  closePiece(build, piece);
}

type Line = ReturnType<typeof logicalLines>[number];

function tellAt(lines: readonly Line[], notes: readonly LineNotes[]): (line: number, found: Fault) => void {
  return (line, found) => {
    const i = lines.findIndex((one) => one.line <= line && line <= one.lastLine);
    notes[i]?.faults.push({ ...found, at: { ...found.at, line } });
  };
}

function readLine(
  line: Line,
  note: LineNotes,
  made: ReadonlyMap<number, MadeByLine>,
  hangs: ReadonlyMap<number, number>,
): ReadLine {
  const follows = followedBy(line, note, hangs);
  const rows: ReadRow[] = [];
  const lengths: ReadLine['lengths'][number][] = [];
  for (let at = line.line; at <= line.lastLine; at += 1) {
    rows.push(...(made.get(at)?.rows ?? []));
    lengths.push(...(made.get(at)?.lengths ?? []));
  }
  return {
    line: line.line,
    lastLine: line.lastLine,
    text: line.text,
    kind: note.kind ?? 'talk',
    rows,
    lengths,
    ...(note.before === undefined ? {} : { before: note.before }),
    ...(note.after === undefined ? {} : { after: note.after }),
    stated: note.stated,
    // a list of measures that has another length than those of the rows works nothing
    faults: makesNothing(note, rows)
      ? note.faults.filter(({ code }) => code !== 'sizes differ')
      : note.faults,
    asksCount: note.asksCount,
    ...(note.countedBy === undefined ? {} : { countedBy: note.countedBy }),
    mended: note.mended,
    unread: note.unread,
    ...(follows === undefined ? {} : { follows }),
  };
}

/** The line from which all that is wrong with this one follows, or whose words it works again. */
function followedBy(
  { line, lastLine }: Line,
  note: LineNotes,
  hangs: ReadonlyMap<number, number>,
): number | undefined {
  if (note.following !== note.faults.length) return undefined;
  if (note.follows !== undefined || note.asksCount) return note.follows;
  for (let at = line; at <= lastLine; at += 1) {
    const from = hangs.get(at);
    if (from !== undefined && (from < line || from > lastLine)) return from;
  }
  return undefined;
}

const makesNothing = ({ kind = 'talk' }: LineNotes, rows: readonly ReadRow[]): boolean =>
  kind === 'talk' && rows.length === 0;

function piecesOf(build: Build, lines: readonly Line[]): ReadPiece[] {
  const indexOf = new Map<number, number>();
  lines.forEach(({ line, lastLine }, i) => {
    for (let at = line; at <= lastLine; at += 1) indexOf.set(at, i);
  });
  return build.begun.flatMap((piece) => {
    const recipe = recipeOf(build, piece);
    if (recipe === undefined) return [];
    const used = new Set(
      piece.parts.flatMap((part) => part.rows.flatMap(({ line }) => indexOf.get(line) ?? [])),
    );
    return [
      withPlan(
        recipe,
        [...used].sort((a, b) => a - b),
      ),
    ];
  });
}

/** The plan is made when it is first looked at: a text that is still being typed does not wait for it. */
function withPlan(recipe: Recipe, lines: readonly number[]): ReadPiece {
  let made: Result<Plan> | undefined;
  return {
    recipe,
    lines,
    get plan() {
      made ??= plan(recipe);
      return made;
    },
  };
}
