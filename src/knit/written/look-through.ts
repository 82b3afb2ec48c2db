import { fits } from '../fabric.ts';
import { rowsKnitted } from '../making-up/top.ts';
import type { PlannedPart } from '../piece/planned.ts';
import { tellsAmounts, tellsFit, tellsMeasures, tellsNeedles, tellsSections } from './look-figures.ts';
import { lengthUnits } from './says-length.ts';
import type { WorkedSize } from './work-size.ts';
import { gaugeLine, gaugesOf } from './write-pattern.ts';
import type { Heading, WrittenWords } from './written-words.ts';

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
  'sections',
  'sides',
  'same words',
  'making up',
  'care',
  'licence',
] as const;
export type Point = (typeof points)[number];

interface Looked {
  readonly sizes: readonly WorkedSize[];
  readonly words: WrittenWords;
  /** lines of the text, by the heading above them */
  readonly under: (heading: Heading) => readonly string[];
  /** one of them begins so */
  readonly tells: (heading: Heading, beginning: string) => boolean;
  readonly lines: readonly string[];
}

/**
 * The points of a technical editor that a written pattern does not meet; none where all is well. Which points: the published
 * lists of Snickerdoodle Knits ('Knitting pattern editing checklist'), K. McGrath ('The value of being thorough') and The
 * Wrinkled Thistle ('Technical editing explained').
 * @param text as `writeSizes` wrote it of these sizes, in these words
 */
export function toMend(text: string, sizes: readonly WorkedSize[], words: WrittenWords): readonly Point[] {
  const blocks = text
    .trim()
    .split('\n\n')
    .map((block) => block.split('\n'));
  const under = (heading: Heading) =>
    blocks.find(([first]) => first === words.headings[heading])?.slice(1) ?? [];
  const only = new RegExp(
    `^${words.list.only(['#']).replace('#', '.*')}|^${words.list.only(['#', '#']).replace(/#.*#/, '.*')}`,
  );
  const tells = (heading: Heading, beginning: string) =>
    under(heading).some((one) => one.replace(only, '').startsWith(beginning));
  const looked: Looked = { sizes, words, under, tells, lines: blocks.flat() };
  return points.filter((point) => !meets[point](looked));
}

/** A figure for each size stands on the line: one for all, or as many as there are sizes. */
const hasLists = (line: string, sizes: number): boolean =>
  (line.match(/\([^()]*,[^()]*\)/g) ?? []).every((list) => {
    // a comma within a figure is none between two
    const values = list.split(/;|,(?=\s)/);
    return (
      !values.every((value) => /^[(\s]*[\d.,–]+(?:st|nd|rd|th)?[)\s]*$/.test(value)) ||
      values.length === sizes - 1
    );
  });

const makes = ({ sizes }: Looked) =>
  sizes.flatMap(({ garment }) => garment.pieces.flatMap((piece) => piece.makes));

const parts = (looked: Looked): readonly PlannedPart[] => makes(looked).flatMap((make) => make.parts);

/** Nearer a knitter does not measure. */
const NEAR_MM = 10;

const knittedMm = (part: PlannedPart): number =>
  part.rows
    .slice(0, rowsKnitted(part))
    .reduce((sum, { section }) => sum + (part.cells[section]?.height ?? 0), 0);

const meets: Readonly<Record<Point, (looked: Looked) => boolean>> = {
  title: ({ lines, words: { facts, headings } }) => {
    const [first = ''] = lines;
    const isName = ![facts.design(''), ...Object.values(headings)].some((one) => first.startsWith(one));
    return isName && lines.some((line) => line.startsWith(facts.design('')));
  },
  'body and ease': ({ under, sizes, words }) => tellsFit(under('fit'), sizes, words),
  measures: ({ tells, sizes, words, words: { facts }, under }) =>
    tellsMeasures(under('finished'), sizes, words) &&
    sizes.every(({ finished }) => finished.chest !== undefined && finished.length !== undefined) &&
    (['chest', 'length'] as const).every((name) =>
      tells('finished', facts.measure(facts.measures[name], '')),
    ),
  yarn: ({ under, sizes, words }) =>
    sizes.every(({ garment }) => {
      const [yarn] = garment.yarns ?? [];
      return yarn !== undefined && yarn.name !== '' && yarn.grams !== undefined && yarn.metres !== undefined;
    }) && tellsAmounts(under('materials'), sizes, words),
  needles: ({ tells, under, sizes, words, words: { facts } }) =>
    tellsNeedles(under('materials'), sizes, words) &&
    tells('materials', facts.needles([])) &&
    tells('materials', facts.notions([])),
  gauge: ({ under, sizes, words }) => {
    const gauges = sizes[0] ? gaugesOf(sizes[0].garment) : [];
    return (
      gauges.length > 0 &&
      gauges.every(
        (gauge) =>
          gauge.fabric !== undefined &&
          gauge.needle !== undefined &&
          under('gauge').some((line) =>
            lengthUnits.some((units) => line.startsWith(gaugeLine(gauge, words, units))),
          ),
      )
    );
  },
  washed: ({ under, words }) => under('gauge').some((line) => line.includes(words.facts.washed)),
  abbreviations: ({ under, lines, words }) => {
    const told = under('abbreviations').map((line) => line.split(' = ')[0] ?? '');
    const gauge = under('gauge');
    const used = shortIn(
      lines.filter((line) => !line.includes(' = ') || gauge.includes(line)),
      words,
    );
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
          return !row || row.before !== row.after || fits(fabric, row.before).fits;
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
  sections: ({ lines, sizes, words }) => tellsSections(lines, sizes, words),
  sides: ({ lines, words: { list, work } }) => {
    // what stands behind the number of a row, 'Row 1 (RS)'
    const sides = (['RS', 'WS'] as const).map((side) => work.row(1, side, '').replace(/.*1/, ''));
    const row = work.row(1, 'RS', '').replace(/1.*/, '');
    return lines.every(
      (line) =>
        !list.isRows.test(line) ||
        !new RegExp(`(?:^|: )${row}\\d[^:]*:`).test(line) ||
        sides.some((side) => line.includes(side.slice(0, side.indexOf(':') + 1))),
    );
  },
  'same words': ({ lines, words }) => !lines.some((line) => words.foreign.test(line)),
  'making up': ({ under, sizes }) =>
    sizes.every(({ steps }) => steps.length > 0) && under('makingUp').length > 0,
  care: ({ under }) => under('care').length > 0,
  licence: ({ tells, words }) => tells('licence', words.facts.licence('')),
};

/** Whatever looks like an abbreviation in the lines, by the name that the list gives it; of several words, each as well. */
function shortIn(lines: readonly string[], { looksShort, abbreviations }: WrittenWords): ReadonlySet<string> {
  const found = lines.join('\n').match(looksShort) ?? [];
  const within = found.flatMap((one) => /\S+ (.+)/.exec(one)?.[1]?.match(looksShort) ?? []);
  const named = (one: string) =>
    abbreviations.find(([name, , word]) => name === one || word?.exec(one)?.[0] === one)?.[0] ?? one;
  return new Set([...found, ...within].map(named));
}
