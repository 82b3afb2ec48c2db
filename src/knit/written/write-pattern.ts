import type { FabricName } from '../fabric.ts';
import { ok, type Result, refuse } from '../fault.ts';
import { MM_PER_INCH } from '../gauge.ts';
import type { MeasuredGauge } from '../measured-gauge.ts';
import type { Garment, Yarn } from '../piece/garment.ts';
import { plan } from '../piece/plan.ts';
import type { PlannedPart } from '../piece/planned.ts';
import type { Recipe } from '../piece/recipe.ts';
import type { StandingGarment } from '../piece/standing.ts';
import type { Terms } from '../row/row-words.ts';
import { englishWritten } from './english.ts';
import { needleIn, type RowLineWords, rowLines } from './row-lines.ts';
import type { LengthUnits } from './says-length.ts';
import type { FactWords, WrittenWords } from './written-words.ts';

export interface WriteOptions {
  readonly terms?: Terms;
}

/** A piece's parts as planned. */
interface Parts {
  readonly parts: readonly PlannedPart[];
}

/**
 * The rows of a garment in standard wording, which `readPattern` reads back; `writeSizes` writes the whole pattern.
 * @returns the text, or the planner's faults
 * @instrument of tests: screens write the whole pattern
 */
export function writePattern(garment: Garment, { terms = 'US' }: WriteOptions = {}): Result<string> {
  const words = englishWritten(terms);
  const blocks: string[][] = [head(garment, words)];
  for (const recipe of garment.pieces) {
    const made = plan(recipe);
    if (!made.ok) return refuse(...made.faults);
    blocks.push(pieceLines(recipe, made.value, words));
  }
  return ok(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}

function head({ name, credits, licence, pieces, yarns }: Garment, words: WrittenWords): string[] {
  const { facts } = words;
  const gauge = pieces.find((piece) => piece.gauge)?.gauge;
  const [yarn] = yarns ?? [];
  return [
    name,
    ...(credits ? [facts.design(credits)] : []),
    ...(licence ? [facts.licence(licence)] : []),
    ...(yarn ? [facts.yarn(yarnWords(yarn, facts))] : []),
    ...(gauge ? [gaugeLine(gauge, words)] : []),
  ];
}

const yarnWords = ({ name, fibre, balls, grams, metres }: Yarn, facts: FactWords): string =>
  [
    name,
    fibre,
    grams && metres ? `${grams} g = ${metres} m` : undefined,
    balls ? facts.balls(balls) : undefined,
  ]
    .filter((word) => word)
    .join(', ');

/** The gauge that a garment is knitted in, and those of its other fabrics that were swatched too, on the needle that they are knitted on. */
export function gaugesOf({ pieces }: Pick<StandingGarment, 'pieces'>): readonly MeasuredGauge[] {
  const found = new Map<FabricName | undefined, MeasuredGauge>();
  const main = pieces.find(({ recipe }) => recipe.gauge)?.recipe.gauge;
  if (main) found.set(main.fabric, main);
  for (const { recipe } of pieces)
    for (const { fabric, needle } of recipe.parts.flatMap(({ sections }) => sections)) {
      const own = recipe.gauges?.[fabric];
      if (own && !found.has(fabric)) found.set(fabric, { ...own, fabric, needle });
    }
  return [...found.values()];
}

/** A gauge is counted over 10 cm, or 4 in where a pattern gives nothing but inches; as published patterns have it. */
export function gaugeLine(
  { stitches, rows, fabric, needle }: MeasuredGauge,
  words: WrittenWords,
  units: LengthUnits = 'cm',
): string {
  const over = units === 'in' ? (4 * MM_PER_INCH) / 100 : 1;
  const figure = (n: number): string => needleIn(words, Math.round(over * n * 10) / 10);
  const inches = `4 ${words.inch}`;
  return words.facts.gauge(
    figure(stitches),
    figure(rows),
    units === 'in' ? inches : units === 'cm' ? '10 cm' : `10 cm / ${inches}`,
    fabric && words.facts.fabrics[fabric],
    needle === undefined ? undefined : needleIn(words, needle),
  );
}

/** @param isTopDown of a sleeve, which is said where its making up is */
export function pieceLines(recipe: Recipe, made: Parts, words: WrittenWords, isTopDown = false): string[] {
  const { name, makes, mirrored = false, role } = recipe;
  // fronts are drafted with the left one, as worn, first
  const asWorn = role === 'front' && makes === 2;
  const times = makes > 1 || isTopDown ? words.work.makes(makes, { mirrored, asWorn, isTopDown }) : '';
  const lines = [`${words.name(name).toUpperCase()}${times}`];
  // a neck bound off tightly does not go over the head; common practice, no published source
  const ends = { ...words, isLoose: role === 'neckband' };
  let needle: number | undefined;
  for (const part of made.parts) {
    lines.push(...partLines(part, made, ends, needle));
    needle = part.rows[part.rows.length - 1]?.needle ?? needle;
  }
  return lines;
}

/** What the lines of a part are written with. */
type PartWords = RowLineWords & Pick<WrittenWords, 'name'>;

function partLines(
  part: PlannedPart,
  made: Parts,
  words: PartWords,
  needleBefore: number | undefined,
): string[] {
  const fresh = !('part' in part.from);
  // what rests unworked between two sides needs no yarn
  if (!fresh && part.rows.length === 0 && part.end === 'hold') return [words.work.hold(part.start, false)];
  const needle = fresh ? part.rows[0]?.needle : needleBefore;
  const lines = [...startLines(part, made, words), ...rowLines(part, words, needle)];
  if (part.end === 'hold') lines.push(words.work.hold(part.left, true));
  return lines;
}

function startLines(part: PlannedPart, made: Parts, words: PartWords): string[] {
  const mm = part.rows[0]?.needle;
  const needle = mm === undefined ? undefined : needleIn(words, mm);
  if ('castOn' in part.from) return [words.work.castOn(part.start, needle)];
  if ('pickUp' in part.from) {
    const edges = part.from.pickUp.map(({ along, stitches, held }) => ({
      along: words.name(along),
      stitches,
      held: held === true,
    }));
    return [words.work.pickUp(edges, part.start, needle)];
  }
  return shareLines(part, part.from, made, words);
}

/** How a part takes its stitches from those that rest. */
function shareLines(
  part: PlannedPart,
  from: Extract<PlannedPart['from'], { part: string }>,
  made: Parts,
  { work }: PartWords,
): string[] {
  const siblings = made.parts.filter((p) => p.parent === from.part);
  const side = part.rows[0]?.side ?? 'RS';
  if (siblings[0] === part) {
    const parent = made.parts.find((p) => p.name === from.part);
    const rest = (parent?.left ?? part.start) - part.start;
    if (rest === 0) return [];
    const first = (from.edge === 'right') === (side === 'RS') ? 'first' : 'last';
    return [work.divide(first, part.start, rest)];
  }
  return [work.rejoin(side, part.start)];
}
