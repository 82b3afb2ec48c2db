import { fits, fitsSeamed } from '../fabric.ts';
import { factsOf } from '../fabric-facts.ts';
import { rowsKnitted } from '../making-up/top.ts';
import type { PlannedPart } from '../piece/planned.ts';
import type { Terms } from '../row/row-words.ts';
import { abbreviated } from './abbreviations.ts';
import type { WorkedSize } from './work-size.ts';

/** What a written pattern is looked through for. */
export const points = [
  'title',
  'body and ease',
  'measures',
  'yarn',
  'needles',
  'gauge',
  'washed',
  'abbreviations',
  'lists',
  'counts',
  'sums',
  'multiples',
  'lengths',
  'sides',
  'same words',
  'making up',
  'care',
  'licence',
] as const;
export type Point = (typeof points)[number];

interface Looked {
  readonly sizes: readonly WorkedSize[];
  readonly terms: Terms;
  /** lines of the text, by the heading above them */
  readonly under: (title: RegExp) => readonly string[];
  readonly lines: readonly string[];
}

/**
 * The points of a technical editor that a written pattern does not meet; none where all is well. Which points: the published
 * lists of Snickerdoodle Knits ('Knitting pattern editing checklist'), K. McGrath ('The value of being thorough') and The
 * Wrinkled Thistle ('Technical editing explained').
 * @param text as `writeSizes` wrote it of these sizes
 */
export function toMend(text: string, sizes: readonly WorkedSize[], terms: Terms): readonly Point[] {
  const blocks = text
    .trim()
    .split('\n\n')
    .map((block) => block.split('\n'));
  const under = (title: RegExp) => blocks.find(([first]) => title.test(first ?? ''))?.slice(1) ?? [];
  const looked: Looked = { sizes, terms, under, lines: blocks.flat() };
  return points.filter((point) => !meets[point](looked));
}

/** A figure for each size stands on the line: one for all, or as many as there are sizes. */
const hasLists = (line: string, sizes: number): boolean =>
  (line.match(/\([^()]*,[^()]*\)/g) ?? []).every((list) => {
    const values = list.split(',');
    return (
      !values.every((value) => /^[(\s]*[\d.–]+(?:st|nd|rd|th)?[)\s]*$/.test(value)) ||
      values.length === sizes - 1
    );
  });

const makes = ({ sizes }: Looked) =>
  sizes.flatMap(({ garment }) => garment.pieces.flatMap((piece) => piece.makes.slice(0, 1)));

const parts = (looked: Looked): readonly PlannedPart[] => makes(looked).flatMap((make) => make.parts);

/** Nearer a knitter does not measure. */
const NEAR_MM = 10;

const knittedMm = (part: PlannedPart): number =>
  part.rows
    .slice(0, rowsKnitted(part))
    .reduce((sum, { section }) => sum + (part.cells[section]?.height ?? 0), 0);

const meets: Readonly<Record<Point, (looked: Looked) => boolean>> = {
  title: ({ lines }) => (lines[0] ?? '') !== '' && lines.some((line) => line.startsWith('Design: ')),
  'body and ease': ({ under }) => ['Body', 'Ease'].every((word) => starts(under(/^SIZE AND FIT/), word)),
  measures: ({ under, sizes }) =>
    sizes.every(({ finished }) => finished.chest !== undefined && finished.length !== undefined) &&
    ['Chest', 'Length'].every((word) => starts(under(/^FINISHED/), word)),
  yarn: ({ under, sizes }) =>
    sizes.every(({ garment }) => {
      const [yarn] = garment.yarns ?? [];
      return yarn !== undefined && yarn.name !== '' && yarn.grams !== undefined && yarn.metres !== undefined;
    }) && starts(under(/^MATERIALS/), 'Amount'),
  needles: ({ under }) => ['Needles', 'Notions'].every((word) => starts(under(/^MATERIALS/), word)),
  gauge: ({ under }) =>
    /\d sts and .* rows = .* in .+ on .+ needles/.test(under(/^(GAUGE|TENSION)/).join(' ')),
  washed: ({ under }) => /washed/.test(under(/^(GAUGE|TENSION)/).join(' ')),
  abbreviations: ({ under, lines }) => {
    const told = under(/^ABBREVIATIONS/).map((line) => line.split(' = ')[0] ?? '');
    const used = abbreviated(lines.filter((line) => !line.includes(' = ') || /^(Gauge|Tension)/.test(line)));
    return told.length === used.size && told.every((one) => used.has(one));
  },
  lists: ({ lines, sizes }) => lines.every((line) => hasLists(line, sizes.length)),
  counts: (looked) =>
    parts(looked).every(
      ({ rows, left }) =>
        rows.every((row, i) => i === 0 || row.before === rows[i - 1]?.after) &&
        (rows.length === 0 || rows.at(-1)?.after === left),
    ),
  sums: (looked) =>
    parts(looked).every(({ rows }) =>
      rows.every(
        ({ before, after, shaping }) => before + shaping.reduce((sum, { by }) => sum + by, 0) === after,
      ),
    ),
  multiples: (looked) =>
    parts(looked).every(
      ({ rows, sections, cells }) =>
        cells.length > 0 &&
        sections.every(({ fabric }, i) => {
          const row = rows.find(({ section }) => section === i);
          return (
            !row ||
            row.before !== row.after ||
            !factsOf(fabric).drawsIn ||
            fits(fabric, row.before).fits ||
            fitsSeamed(fabric, row.before).fits
          );
        }),
    ),
  lengths: ({ sizes }) =>
    sizes.every(({ garment, finished: { length } }) => {
      const back = garment.pieces.find(({ recipe }) => recipe.role === 'back')?.makes[0]?.parts;
      if (!back || length === undefined) return true;
      const topOf = (part: PlannedPart | undefined): number =>
        part === undefined ? 0 : knittedMm(part) + topOf(back.find(({ name }) => name === part.parent));
      return Math.abs(Math.max(...back.map(topOf)) - length) < NEAR_MM;
    }),
  sides: ({ lines }) =>
    lines.every((line) => !/^(?:Sizes? .* only: )?Row /.test(line) || /\((?:RS|WS)\)/.test(line)),
  'same words': ({ lines, terms }) => {
    const other =
      terms === 'US'
        ? /\bcast off\b|\btension\b|stocking stitch/i
        : /\bbind off\b|\bbound off\b|\bgauge\b|stockinette/i;
    return !lines.some((line) => other.test(line));
  },
  'making up': ({ under, sizes }) =>
    sizes.every(({ steps }) => steps.length > 0) && under(/^MAKING UP/).length > 0,
  care: ({ under }) => under(/^CARE/).length > 0,
  licence: ({ under }) => starts(under(/^LICENCE/), 'Licence'),
};

const starts = (lines: readonly string[], word: string): boolean =>
  lines.some((line) => line.replace(/^Sizes? .* only: /, '').startsWith(word));
