import type { FabricName } from '../fabric.ts';
import { ok, type Result, refuse } from '../fault.ts';
import type { MeasuredGauge } from '../measured-gauge.ts';
import type { Garment, Yarn } from '../piece/garment.ts';
import { plan } from '../piece/plan.ts';
import type { PlannedPart } from '../piece/planned.ts';
import type { Recipe } from '../piece/recipe.ts';
import { englishRowWords, type Terms } from '../row/row-words.ts';
import { LEFT_FIRST, TOP_DOWN } from './making-up-table.ts';
import { type RowLineWords, rowLines, stitchCount } from './row-lines.ts';

export interface WriteOptions {
  readonly terms?: Terms;
}

/** A piece's parts as planned. */
interface Parts {
  readonly parts: readonly PlannedPart[];
}

export const rowLineWords = (terms: Terms): RowLineWords => ({
  rows: englishRowWords(terms),
  bindOff: terms === 'US' ? 'Bind off' : 'Cast off',
});

/**
 * The rows of a garment in standard wording, which `readPattern` reads back; `writeSizes` writes the whole pattern.
 * @returns the text, or the planner's faults
 * @instrument of tests: screens write the whole pattern
 */
export function writePattern(garment: Garment, { terms = 'US' }: WriteOptions = {}): Result<string> {
  const words = rowLineWords(terms);
  const blocks: string[][] = [head(garment, terms)];
  for (const recipe of garment.pieces) {
    const made = plan(recipe);
    if (!made.ok) return refuse(...made.faults);
    blocks.push(pieceLines(recipe, made.value, words));
  }
  return ok(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}

function head(garment: Garment, terms: Terms): string[] {
  const gauge = garment.pieces.find((piece) => piece.gauge)?.gauge;
  const yarn = garment.yarns?.[0];
  const lines = [garment.name];
  if (garment.credits) lines.push(`Design: ${garment.credits}`);
  if (garment.licence) lines.push(`Licence: ${garment.licence}`);
  if (yarn) lines.push(`Yarn: ${yarnWords(yarn)}`);
  if (gauge) lines.push(gaugeLine(gauge, terms));
  return lines;
}

const yarnWords = ({ name, fibre, balls, grams, metres }: Yarn): string =>
  [
    name,
    fibre,
    grams && metres ? `${grams} g = ${metres} m` : undefined,
    balls ? `${balls} balls` : undefined,
  ]
    .filter((word) => word)
    .join(', ');

const figure = (n: number): string => String(Math.round(n * 10) / 10);

export function gaugeLine({ stitches, rows, fabric, needle }: MeasuredGauge, terms: Terms): string {
  const word = terms === 'US' ? 'Gauge' : 'Tension';
  const measuredIn = fabric === undefined ? '' : ` in ${fabricWords[fabric][terms]}`;
  const on = needle === undefined ? '' : ` on ${needle} mm needles`;
  return `${word}: ${figure(stitches)} sts and ${figure(rows)} rows = 10 cm${measuredIn}${on}.`;
}

/** A fabric as leaflets of either side of the Atlantic name it (American Thread; Patons & Baldwins). */
const fabricWords: Readonly<Record<FabricName, Readonly<Record<Terms, string>>>> = {
  garter: { US: 'garter stitch', UK: 'garter stitch' },
  stocking: { US: 'stockinette stitch', UK: 'stocking stitch' },
  'reverse stocking': { US: 'reverse stockinette stitch', UK: 'reverse stocking stitch' },
  'rib 1x1': { US: 'k1, p1 rib', UK: 'k1, p1 rib' },
  'rib 1x1 matched': { US: 'k1, p1 rib', UK: 'k1, p1 rib' },
  'rib 2x2': { US: 'k2, p2 rib', UK: 'k2, p2 rib' },
  moss: { US: 'seed stitch', UK: 'moss stitch' },
};

/** @param isTopDown of a sleeve, which is said where its making up is */
export function pieceLines(recipe: Recipe, made: Parts, words: RowLineWords, isTopDown = false): string[] {
  const about = [
    ...(recipe.mirrored ? [`the second as a mirror image${asWorn(recipe)}`] : []),
    ...(isTopDown ? [TOP_DOWN] : []),
  ];
  const makes = recipe.makes > 1 || isTopDown ? ` (${[`make ${recipe.makes}`, ...about].join(', ')})` : '';
  const lines = [`${recipe.name.toUpperCase()}${makes}`];
  // a neck bound off tightly does not go over the head; common practice, no published source
  const ends = recipe.role === 'neckband' ? { ...words, how: ' loosely' } : words;
  let needle: number | undefined;
  for (const part of made.parts) {
    lines.push(...partLines(part, made, ends, needle));
    needle = part.rows[part.rows.length - 1]?.needle ?? needle;
  }
  return lines;
}

/** Fronts are drafted with the left one, as worn, first. */
const asWorn = ({ role, makes }: Recipe): string =>
  role === 'front' && makes === 2 ? `: ${LEFT_FIRST}` : '';

function partLines(
  part: PlannedPart,
  made: Parts,
  words: RowLineWords,
  needleBefore: number | undefined,
): string[] {
  const fresh = !('part' in part.from);
  // what rests unworked between two sides needs no yarn
  if (!fresh && part.rows.length === 0 && part.end === 'hold')
    return [`Place next ${stitchCount(part.start)} on a holder.`];
  const needle = fresh ? part.rows[0]?.needle : needleBefore;
  const lines = [...startLines(part, made), ...rowLines(part, words, needle)];
  if (part.end === 'hold') lines.push(`Place rem ${part.left} sts on a holder.`);
  return lines;
}

function startLines(part: PlannedPart, made: Parts): string[] {
  const needle = part.rows[0]?.needle;
  const withNeedle = needle === undefined ? '' : `With ${needle} mm needles, `;
  if ('castOn' in part.from) return [capital(`${withNeedle}cast on ${part.start} sts.`)];
  if ('pickUp' in part.from) {
    const edges = part.from.pickUp.map(({ along, stitches, held }) =>
      held
        ? `knit ${stitchCount(stitches)} from holder along ${along}`
        : `pick up and knit ${stitchCount(stitches)} along ${along}`,
    );
    return [capital(`${withNeedle}with RS facing, ${edges.join(', ')}. (${stitchCount(part.start)})`)];
  }
  return shareLines(part, part.from, made);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** How a part takes its stitches from those that rest. */
function shareLines(
  part: PlannedPart,
  from: Extract<PlannedPart['from'], { part: string }>,
  made: Parts,
): string[] {
  const siblings = made.parts.filter((p) => p.parent === from.part);
  const side = part.rows[0]?.side ?? 'RS';
  if (siblings[0] === part) {
    const parent = made.parts.find((p) => p.name === from.part);
    const rest = (parent?.left ?? part.start) - part.start;
    if (rest === 0) return [];
    const first = (from.edge === 'right') === (side === 'RS') ? 'first' : 'last';
    return [
      `Divide: work on ${first} ${stitchCount(part.start)} only; place rem ${stitchCount(rest)} on a holder.`,
    ];
  }
  return [`With ${side} facing, rejoin yarn to next ${stitchCount(part.start)}.`];
}
