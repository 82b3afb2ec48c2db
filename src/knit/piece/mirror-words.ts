import { expandRow } from '../row/expand.ts';
import { mirrorStitches, otherFaces } from '../row/mirror-stitches.ts';
import { shortenWorks } from '../row/shorten.ts';
import { otherSide, type Side, type Step } from '../row/step.ts';
import { type StitchName, stitches } from '../stitch.ts';
import { changeOf, startOf } from './counts.ts';
import type { PartRecipe, Section } from './recipe.ts';
import { closesGap } from './turn-way.ts';

/** A row in words, stitch by stitch in the order worked. */
interface WordedRow {
  readonly side: Side;
  /** what is bound off at its beginning, where stitches are left after it */
  readonly group: number;
  /** the rest of it, without what is only said of gaps */
  readonly works: readonly StitchName[];
  readonly said: readonly StitchName[];
}

type Rows = readonly (WordedRow | undefined)[];

/**
 * The sections of a part as its mirror image, as far as their rows are spelled out in words: each row is read from its
 * other end, on its own side, and what can be worked only where a row begins or ends (a group bound off, a turn) moves
 * to the row beside it. Where that does not come out the rows are read from their other end and no more.
 */
export function mirrorWords(part: PartRecipe): readonly Section[] {
  if (part.sections.every(({ words }) => words === undefined)) return part.sections;
  const rows = rowsOf(part);
  const exact = rows.map((row, i) => row && mirrorRow(rows, row, i));
  const isExact = rows.every((row, i) => row === undefined || exact[i] !== undefined);
  let at = 0;
  return part.sections.map((section): Section => {
    const first = at;
    at += section.rows;
    if (!section.words) return section;
    const words = rows.slice(first, at).flatMap((row, i) => {
      const made = isExact ? exact[first + i] : row && readBackwards(row);
      return made ? [made] : [];
    });
    return { ...section, words: words.slice(0, comesAgainAfter(words, section.words.length)) };
  });
}

/** Rows that come again in turn are kept once. */
const comesAgainAfter = (words: readonly (readonly Step[])[], rows: number): number => {
  const said = words.map((steps) => JSON.stringify(steps));
  return said.every((one, i) => i < rows || one === said[i - rows]) ? rows : words.length;
};

function rowsOf({ from, firstSide, sections }: PartRecipe): Rows {
  const rows: (WordedRow | undefined)[] = [];
  let side: Side = firstSide ?? ('pickUp' in from ? 'WS' : 'RS');
  let count = startOf(from);
  for (const section of sections) {
    const { words } = section;
    count = section.onNeedle ?? count;
    for (let i = 0; i < section.rows; i += 1) {
      const works = words && expandRow(words[i % words.length] ?? [], count);
      rows.push(works && wordedRow(works, side));
      if (works) count = made(works);
      side = otherSide(side);
    }
    if (!words) count += changeOf(section);
  }
  return rows;
}

function wordedRow(all: readonly StitchName[], side: Side): WordedRow {
  const works = all.filter((work) => !closesGap(work));
  const end = works.findIndex((work) => work !== 'bo');
  const group = Math.max(0, end);
  return { side, group, works: works.slice(group), said: all.filter(closesGap) };
}

const taken = (works: readonly StitchName[]): number =>
  works.reduce((sum, work) => sum + stitches[work].takes, 0);
const made = (works: readonly StitchName[]): number =>
  works.reduce((sum, work) => sum + stitches[work].makes, 0);

const many = (work: StitchName, times: number): readonly StitchName[] =>
  Array.from({ length: times }, () => work);

const readBackwards = ({ group, works, said }: WordedRow): readonly Step[] =>
  shortenWorks([...mirrorStitches(works), ...said, ...many('bo', group)]);

function mirrorRow(rows: Rows, row: WordedRow, i: number): readonly Step[] | undefined {
  const next = rows[i + 1];
  const works = withGroupsMoved(rows, row, i);
  const turns = isTurned(row) || (next !== undefined && isTurned(next));
  const made = works && turns ? withTurnsMoved(rows, row, i, works) : works;
  return made && shortenWorks(made);
}

/** A group at the beginning of a RS row goes one row later, one of a WS row goes one earlier, where that row is in words too. */
function movesBy(rows: Rows, i: number): 1 | -1 | undefined {
  const wish = rows[i]?.side === 'RS' ? 1 : -1;
  if (rows[i + wish] !== undefined) return wish;
  return rows[i - wish] === undefined ? undefined : wish === 1 ? -1 : 1;
}

function withGroupsMoved(rows: Rows, row: WordedRow, i: number): readonly StitchName[] | undefined {
  const own = row.group > 0 ? movesBy(rows, i) : 1;
  if (own === undefined) return undefined;
  const later = groupFrom(rows, i - 1, 1);
  const earlier = groupFrom(rows, i + 1, -1);
  const works = mirrorStitches(row.works);
  // what is bound off a row earlier is not worked before
  const rest = behind(works, earlier);
  if (rest === undefined) return undefined;
  const stays = own === 1 ? facesAt(rows, row, i, row.group, 'end') : [];
  return [...many('bo', later + earlier), ...rest, ...stays];
}

const groupFrom = (rows: Rows, i: number, by: 1 | -1): number =>
  (rows[i]?.group ?? 0) > 0 && movesBy(rows, i) === by ? (rows[i]?.group ?? 0) : 0;

const isPlain = (work: StitchName | undefined): boolean => work === 'k' || work === 'p';

/** As its row is worked; of decreases alone nobody knows, and they are taken for stocking stitch. */
const plainOf = ({ works, side }: WordedRow): StitchName =>
  works.find(isPlain) ?? (side === 'RS' ? 'k' : 'p');

/** So many plain stitches at an end of the mirrored row, as two rows before, or where they were last worked like it: fabrics come again after two rows. */
function facesAt(
  rows: Rows,
  row: WordedRow,
  i: number,
  count: number,
  where: 'start' | 'end',
): readonly StitchName[] {
  if (count === 0) return [];
  for (let k = i; k >= 0; k -= 2) {
    const works = mirrorStitches(rows[k]?.works ?? []);
    const zone = where === 'start' ? works.slice(0, count) : works.slice(-count);
    const isFree = k < i || rows[k]?.group === 0;
    if (isFree && zone.length === count && zone.every(isPlain)) return zone;
  }
  return many(plainOf(row), count);
}

const isTurned = ({ works, said }: WordedRow): boolean => said.length > 0 || works.includes('unworked');

const isOfTurn = (work: StitchName): boolean =>
  work === 'unworked' || work === 'ds' || work === 'wrap next st';

/**
 * Rows that turn on the WS turn on the RS in the mirror image, and the other way round: where the stitches rest a row is
 * worked as the next one was, seen from its other side; all else stays in its own row.
 */
function withTurnsMoved(
  rows: Rows,
  row: WordedRow,
  i: number,
  works: readonly StitchName[],
): readonly StitchName[] | undefined {
  const next = rows[i + 1];
  const own = works.filter((work) => work !== 'wrap next st');
  const other = next ? otherFaces(next.works) : own.map((work) => (isOfTurn(work) ? plainOf(row) : work));
  const first = Math.max(restAt(own, 'start'), restAt(other, 'start'));
  const last = Math.max(restAt(own, 'end'), restAt(other, 'end'));
  const start = upTo(other, first);
  const middle = upTo(behind(own, first) ?? [], taken(own) - first - last);
  const end = behind(other, taken(other) - last);
  if (!start || !middle || !end || middle.some(isOfTurn)) return undefined;
  const turned = [
    ...withFaces(start, facesAt(rows, row, i, first, 'start')),
    ...middle,
    ...withFaces(end, facesAt(rows, row, i, last, 'end')),
  ];
  return withSaid(turned, next?.said ?? []);
}

/** Turned as `works` is, all else worked as `faces` are. */
function withFaces(works: readonly StitchName[], faces: readonly StitchName[]): readonly StitchName[] {
  let at = 0;
  return works.map((work) => {
    const face = faces[at] ?? work;
    at += stitches[work].takes;
    return isOfTurn(work) ? work : face;
  });
}

/** Stitches from the row's start or end to the innermost that has to do with a turn there. */
function restAt(works: readonly StitchName[], where: 'start' | 'end'): number {
  const list = where === 'start' ? works : [...works].reverse();
  if (!list.some(isOfTurn) || !isOfTurn(list[0] ?? 'k')) return 0;
  const end = list.findIndex((work) => !isOfTurn(work));
  // of a row that works a double stitch alone all that rests lies before it
  if (end < 0 && list[0] === 'ds') return 0;
  return taken(end < 0 ? list : list.slice(0, end));
}

/** What is said of gaps stands behind the last stitch worked. */
function withSaid(works: readonly StitchName[], said: readonly StitchName[]): readonly StitchName[] {
  const back = [...works].reverse().findIndex((work) => !isOfTurn(work) || work === 'ds');
  const worked = works.length - Math.max(0, back);
  return [...works.slice(0, worked), ...said, ...works.slice(worked)];
}

/** The row's first works, over just so many stitches; undefined where one of them would be torn. */
function upTo(works: readonly StitchName[], count: number): readonly StitchName[] | undefined {
  const rest = behind(works, count);
  return rest && works.slice(0, works.length - rest.length);
}

function behind(works: readonly StitchName[], count: number): readonly StitchName[] | undefined {
  let left = count;
  let i = 0;
  for (; left > 0 && i < works.length; i += 1) left -= stitches[works[i] as StitchName].takes;
  return left === 0 ? works.slice(i) : undefined;
}
