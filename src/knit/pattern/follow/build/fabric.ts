import { type FabricName, fabrics } from '../../../fabric.ts';
import { expandRow } from '../../../row/expand.ts';
import type { Item } from '../../../row/read/notation.ts';
import type { FabricSaid } from '../../say/statement.ts';
import type { Build, PartBuild, StitchPattern } from './build.ts';
import type { FabricState } from './fabric-state.ts';
import { looksOf } from './spell.ts';

const face = (name: FabricName, rows: readonly string[], label: string): FabricState => ({
  is: 'face',
  name,
  rows,
  label,
});

/** What nobody can say. */
export const unknownFabric: FabricState = { is: 'patt', label: 'pattern' };

export const knownFabric = (name: FabricName): FabricState => face(name, fabrics[name].rows, name);

const unnamed = new WeakSet<FabricState>();

/** One that no text names: rows that are repeated look so. */
export function seenFabric(name: FabricName): FabricState {
  const fabric = knownFabric(name);
  unnamed.add(fabric);
  return fabric;
}

/** Whether a text says what the fabric is. */
export const isNamed = (fabric: FabricState): boolean =>
  fabric.is === 'face' && fabric !== unsaidFabric && !unnamed.has(fabric);

/** What a part begins with until a fabric is said; no pattern goes on in it. */
export const unsaidFabric: FabricState = knownFabric('stocking');

const RIBS: Readonly<Record<string, FabricName>> = { kp: 'rib 1x1', kkpp: 'rib 2x2' };

/** The fabric that the text names; undefined where it names one that nobody knows. */
export function fabricOf(
  said: FabricSaid,
  build: Build,
  part: PartBuild | undefined,
): FabricState | undefined {
  switch (said.is) {
    case 'named':
      return knownFabric(said.name);
    case 'knit on':
      return goesOnKnitting(part);
    case 'rib':
      return face(RIBS[said.face] ?? 'rib 2x2', [said.face], 'rib');
    case 'established':
      return part?.fabric ?? { is: 'patt', label: 'pattern' };
    case 'pattern':
      return definedPattern(said.name, build) ?? patternElse(said.else, build, part);
  }
}

function goesOnKnitting(part: PartBuild | undefined): FabricState {
  const now = part?.fabric;
  // 'work in st st, (beg with a k row) knit until …': named since the last row
  if (now && part && now !== part.rows.at(-1)?.fabric && isNamed(now) && now.is === 'face') return now;
  // behind a row that was not understood nobody knows what goes on
  if (part?.rows.at(-1)?.own !== undefined && !part.rows.at(-1)?.hole)
    return { is: 'patt', label: 'pattern' };
  return now?.is === 'face' && now.name === 'stocking' && part && part.rows.length > 0
    ? now
    : knownFabric('garter');
}

/** A stitch pattern that the text defines by that name, or by one that has it within. */
function definedPattern(wanted: string, build: Build): FabricState | undefined {
  for (const [name, pattern] of build.patterns) {
    if (wanted !== '' && (name === wanted || name.includes(wanted) || wanted.includes(name)))
      return rowsFabric(pattern);
  }
  return undefined;
}

/** The stitch pattern of a text that defines but one. */
export function onlyPattern({ patterns }: Build): FabricState | undefined {
  const [only] = patterns.values();
  return only && patterns.size === 1 ? rowsFabric(only) : undefined;
}

type Else = Extract<FabricSaid, { is: 'pattern' }>['else'];

function patternElse(meant: Else, build: Build, part: PartBuild | undefined): FabricState | undefined {
  switch (meant) {
    case 'rib':
      return lastRib(part) ?? ribJustSpelled(part) ?? ribOfOthers(build);
    case 'double moss':
      return face('moss', ['kkpp', 'kkpp', 'ppkk', 'ppkk'], 'double moss');
    case 'the pattern': {
      const only = onlyPattern(build);
      if (only && part?.fabric.is !== 'rows') return only;
      return part?.fabric !== unsaidFabric && part?.fabric.label !== 'rib'
        ? part?.fabric
        : (patternOfOthers(build) ?? unknownFabric);
    }
    default:
      return undefined;
  }
}

function lastRib(part: PartBuild | undefined): FabricState | undefined {
  if (part?.fabric.label === 'rib') return part.fabric;
  for (let i = (part?.rows.length ?? 0) - 1; i >= 0; i -= 1) {
    // a rib that nobody understood is not the one before it
    if (i === part?.unreadRib) return unknownFabric;
    const { fabric, own } = part?.rows[i] ?? {};
    if (fabric?.label === 'rib' && own === undefined) return fabric;
  }
  return undefined;
}

/** 'Row 1: k3, p1 across. Rib for 10 cm': one row is spelled, and the others are as its stitches show. */
function ribJustSpelled(part: PartBuild | undefined): FabricState | undefined {
  const only = part?.rows[0];
  if (part === undefined || only === undefined || part.rows.length > 1 || only.own !== undefined)
    return undefined;
  const looks = only.items && looksOf(expandRow(only.steps, only.before), only.side);
  if (looks === undefined || looks.length !== part.live || new Set(looks).size < 2) return undefined;
  let period = 2;
  while ([...looks].some((look, i) => i >= period && look !== looks[i - period])) period += 1;
  const once = looks.slice(0, period);
  return face(RIBS[once] ?? 'rib 2x2', [once], 'rib');
}

/** The rib of the piece before. */
function ribOfOthers(build: Build): FabricState | undefined {
  for (let i = build.begun.length - 1; i >= 0; i -= 1) {
    const piece = build.begun[i];
    const [first] = (piece === build.piece ? undefined : piece?.parts) ?? [];
    const rib =
      lastRib(first) ?? [first, ...(first?.rows ?? [])].map((one) => one?.fabric).find(isSpelledRib);
    if (rib !== undefined) return { ...rib, label: 'rib' };
  }
  return undefined;
}

export function isRibbed(items: readonly Item[]): boolean {
  const works = new Set<string>();
  const plain = (one: Item): boolean => {
    if ('items' in one) return one.items.every(plain);
    if (one.is !== 'stitches' && one.is !== 'stitches to') return false;
    works.add(one.work);
    return one.work === 'k' || one.work === 'p';
  };
  return items.every(plain) && works.size === 2;
}

const isSpelledRib = (fabric: FabricState | undefined): boolean =>
  fabric?.is === 'rows' && fabric.rows.length === 2 && fabric.rows.every(isRibbed);

/** Rows that pieces before were worked in, where there is but one such pattern. */
export function patternOfOthers({ begun, piece }: Build): FabricState | undefined {
  const found = new Map<string, FabricState>();
  for (const { parts } of begun.filter((one) => one !== piece))
    for (const { fabric } of parts.flatMap(({ rows }) => rows))
      if (fabric.is === 'rows' && fabric.label === 'pattern') found.set(inWords(fabric.rows), fabric);
  const [only] = found.values();
  return found.size === 1 ? only : undefined;
}

const inWords = (rows: readonly (readonly Item[])[]): string => JSON.stringify(rows);

export function rowsFabric(pattern: StitchPattern): FabricState {
  return { is: 'rows', rows: orderedRows(pattern), label: pattern.name, faces: [...(pattern.faces ?? [])] };
}

type Numbered = Pick<StitchPattern, 'rows' | 'everyOther'>;

/** Rows with their numbers, 'row 2 and every WS row' filled in. */
export function numberedRows(pattern: Numbered): { n: number; items: readonly Item[] }[] {
  const last = Math.max(0, ...pattern.rows.keys());
  const out: { n: number; items: readonly Item[] }[] = [];
  for (let n = 1; n <= last || (pattern.everyOther && n === last + 1 && last % 2 === 1); n += 1) {
    const items = pattern.rows.get(n) ?? pattern.everyOther;
    if (items) out.push({ n, items });
  }
  return out;
}

export const orderedRows = (pattern: Numbered): (readonly Item[])[] =>
  numberedRows(pattern).map(({ items }) => items);

export const sameFabric = (a: FabricState, b: FabricState): boolean =>
  a === b || (a.is === 'face' && b.is === 'face' && a.rows.join('|') === b.rows.join('|'));

/** The nearest fabric that the model has a gauge for. */
export const nominal = (fabric: FabricState): FabricName => (fabric.is === 'face' ? fabric.name : 'stocking');
