import { MM_PER_INCH } from '../gauge.ts';
import { type Finished, neckWorn } from '../making-up/finished.ts';
import { needleIn, sectionLine } from './row-lines.ts';
import type { WorkedSize } from './work-size.ts';
import type { ListWords, WrittenWords } from './written-words.ts';

/** What a line says to each size: of a list its own figure, of a line that some sizes have alone nothing to the others. */
function figuresOf(line: string, sizes: number, { figure }: ListWords): readonly (readonly number[])[] {
  const said = line.replace(/(\S+) \(([^()]*)\)/g, (whole, first: string, rest: string) => {
    const others = rest.split(/;|,(?=\s)/);
    return others.length === sizes - 1 ? `<${[first, ...others].map((one) => one.trim()).join('|')}>` : whole;
  });
  return Array.from({ length: sizes }, (_, i) =>
    (said.replace(/<([^<>]*)>/g, (_list, all: string) => all.split('|')[i] ?? '').match(figure) ?? []).map(
      (one) => Number(one.replace(',', '.').replace(/[^\d.]/g, '')),
    ),
  );
}

/** Whether a line that tells of something says such a figure of it to the size at that place. */
const saysOf = (
  lines: readonly string[],
  of: string,
  [at, sizes]: readonly [at: number, sizes: number],
  list: ListWords,
  isIt: (figure: number) => boolean,
): boolean => lines.some((line) => line.includes(of) && (figuresOf(line, sizes, list)[at] ?? []).some(isIt));

/** Half of the step to which a length is said: centimetres to a half, inches to a quarter. */
const NEAR_MM = { cm: 2.6, in: MM_PER_INCH / 8 + 0.1 } as const;

/** The finished measures stand in the text as they are, for each size. */
export const tellsMeasures = (
  lines: readonly string[],
  sizes: readonly WorkedSize[],
  { facts, list }: WrittenWords,
): boolean =>
  (Object.keys(facts.measures) as (keyof typeof facts.measures)[]).every((name) => {
    const begins = facts.measure(facts.measures[name], '');
    const own = sizes.map(({ finished }) => measureOf(finished, name));
    if (own.every((mm) => mm === undefined)) return !lines.some((line) => line.includes(begins));
    return own.every(
      (mm, i) => mm === undefined || saysOf(lines, begins, [i, sizes.length], list, (n) => isNear(n, mm)),
    );
  });

/** The body that each size is for, and how much wider or narrower the garment is. */
export const tellsFit = (
  lines: readonly string[],
  sizes: readonly WorkedSize[],
  { facts, list }: WrittenWords,
): boolean =>
  sizes.every(({ design }, i) => {
    if (!design) return false;
    const { body, ease } = design;
    const own = (begins: string, mm: number) =>
      saysOf(lines, begins, [i, sizes.length], list, (n) => isNear(n, mm));
    // up to where the figure stands, whichever side of it the name is on
    const [eased = ''] = facts.ease('#', ease.chest >= 0).split('#');
    return own(facts.body(''), body.chest) && own(eased, Math.abs(ease.chest));
  });

/** The metres to buy for each size, its reserve included, to the next ten. */
export const tellsAmounts = (
  lines: readonly string[],
  sizes: readonly WorkedSize[],
  { facts, list }: WrittenWords,
): boolean =>
  sizes.every(({ yarn }, i) =>
    saysOf(
      lines,
      facts.amount([]),
      [i, sizes.length],
      list,
      (n) => n >= yarn.metresToBuy && n < yarn.metresToBuy + 10,
    ),
  );

const isNear = (said: number, mm: number): boolean =>
  Math.abs(10 * said - mm) <= NEAR_MM.cm || Math.abs(MM_PER_INCH * said - mm) <= NEAR_MM.in;

const measureOf = (finished: Finished, name: keyof WrittenWords['facts']['measures']): number | undefined =>
  name === 'neck' ? neckWorn(finished) : finished[name];

/** Each section of each piece is told with its rows, for each size, in their order. */
export const tellsSections = (
  lines: readonly string[],
  sizes: readonly WorkedSize[],
  words: WrittenWords,
): boolean => {
  const told = lines.map((line) => ({
    skeleton: upToRows(line, words.list),
    figures: figuresOf(line, sizes.length, words.list),
  }));
  return sizes.every(({ garment }, i) => {
    let at = -1;
    return sectionLines(garment, words).every((line) => {
      const skeleton = upToRows(line, words.list);
      const wanted = figuresOf(line, 1, words.list)[0]?.join() ?? '';
      at = told.findIndex(
        (one, n) => n > at && one.skeleton.endsWith(skeleton) && one.figures[i]?.join().endsWith(wanted),
      );
      return at >= 0;
    });
  });
};

const sectionLines = ({ pieces }: WorkedSize['garment'], words: WrittenWords): readonly string[] =>
  pieces.flatMap(({ makes }) =>
    (makes[0]?.parts ?? []).flatMap((part) =>
      part.sections.flatMap(({ first, last }, i) => (last < first ? [] : sectionLine(part, i, words))),
    ),
  );

/** A line without its figures. */
const bare = (line: string, { figure }: ListWords): string =>
  line
    .replace(/ \([^()]*[\d–][^()]*\)/g, '')
    .replace(figure, '#')
    .replace(/–/g, '#');

/** Up to the rows, the last figure of a section's line: whether one or several is said of all sizes together. */
const upToRows = (line: string, words: ListWords): string => {
  const skeleton = bare(line, words);
  return skeleton.slice(0, skeleton.lastIndexOf('#') + 1);
};

/** Every needle that a row is worked with stands among the needles. */
export const tellsNeedles = (
  lines: readonly string[],
  sizes: readonly WorkedSize[],
  words: WrittenWords,
): boolean =>
  sizes.every(({ garment }) =>
    garment.pieces.every(({ makes }) =>
      (makes[0]?.parts ?? []).every(({ rows }) =>
        rows.every(({ needle }) => lines.some((line) => line.includes(`${needleIn(words, needle)} mm`))),
      ),
    ),
  );
