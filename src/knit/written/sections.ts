import { garmentKinds } from '../garment/kinds/garments.ts';
import { yarnWeights } from '../garment/yarn-weight.ts';
import { neckWorn } from '../making-up/finished.ts';
import type { MakingUpStep } from '../making-up/step.ts';
import { needleIn } from './row-lines.ts';
import type { SaysLength } from './says-length.ts';
import type { WorkedSize } from './work-size.ts';
import type { FactWords, WrittenWords } from './written-words.ts';

/** A part of the written pattern; its lines are laid beside those of the other sizes. */
export interface WrittenSection {
  readonly title: string;
  readonly lines: readonly string[];
}

/** 'Pullover with set-in armholes and a round neck, knitted flat in pieces and sewn together.' */
function whatItIs({ design }: WorkedSize, { facts }: WrittenWords): string {
  if (!design) return facts.pieces;
  const { kind, armhole, neck } = design;
  return facts.whatItIs(facts.kinds[kind], facts.armholes[armhole], facts.necks[neck.shape]);
}

/** What it is and whom it fits. */
export function sizeAndFit(size: WorkedSize, words: WrittenWords, length: SaysLength): WrittenSection {
  const lines = [whatItIs(size, words)];
  const { design } = size;
  if (design) {
    const { chest } = design.ease;
    lines.push(
      words.facts.body(length(design.body.chest)),
      words.facts.ease(length(Math.abs(chest)), chest >= 0),
    );
  }
  return { title: words.headings.fit, lines };
}

/** Made up, seams deducted. */
export function finishedMeasures(
  { finished }: WorkedSize,
  { facts, headings }: WrittenWords,
  length: SaysLength,
): WrittenSection {
  const all = [
    ['chest', finished.chest],
    ['length', finished.length],
    ['napeToCuff', finished.napeToCuff],
    ['upperArm', finished.upperArm],
    ['wrist', finished.wrist],
    ['neck', neckWorn(finished)],
  ] as const;
  return {
    title: headings.finished,
    lines: all.flatMap(([name, mm]) =>
      mm === undefined ? [] : [facts.measure(facts.measures[name], length(mm))],
    ),
  };
}

const METRES_PER_YARD = 0.9144;

/** Yarn to buy, its reserve included, to the next 10 m, and what is needed beside it. */
export function materials(
  size: WorkedSize,
  text: readonly string[],
  words: WrittenWords,
  number: NeedleNumber = () => undefined,
): WrittenSection {
  const { garment, yarn } = size;
  const { facts } = words;
  const [first] = garment.yarns ?? [];
  const strands = first?.strands ?? 1;
  const metres = Math.ceil(yarn.metresToBuy / 10) * 10;
  const perGram = first?.grams && first.metres ? first.metres / first.grams : undefined;
  const amounts = [
    `${metres} m / ${Math.ceil(metres / METRES_PER_YARD / 10) * 10} ${facts.yards}`,
    ...(perGram ? [`${Math.ceil(metres / perGram / 10) * 10} g`] : []),
    ...(yarn.balls === undefined ? [] : [facts.balls(yarn.balls)]),
  ];
  return {
    title: words.headings.materials,
    lines: [
      yarnLine(size, facts),
      ...(strands > 1 ? [facts.strands(strands)] : []),
      facts.amount(amounts),
      needleLine(size, words, number),
      ...notions(size, text, facts),
      ...longNeedles(size, words),
    ],
  };
}

function yarnLine({ garment: { yarns, pieces } }: WorkedSize, facts: FactWords): string {
  const [first] = yarns ?? [];
  const gauge = pieces.find(({ recipe }) => recipe.gauge)?.recipe.gauge;
  const isPlain = gauge?.fabric === undefined || gauge.fabric === 'stocking';
  const weights = gauge && isPlain ? yarnWeights(gauge.stitches) : [];
  const words = [
    first?.name,
    first?.fibre,
    first?.grams && first.metres ? `${first.grams} g = ${first.metres} m` : undefined,
    weights.length > 0 ? facts.weight(weights) : undefined,
  ].filter((word) => word);
  return facts.yarn(words.join(', ') || facts.anyYarn);
}

/** What a needle of so many mm is called in another system, 'US 6'; undefined where it has no name there. */
export type NeedleNumber = (mm: number) => string | undefined;

function needleLine({ garment }: WorkedSize, words: WrittenWords, number: NeedleNumber): string {
  const rows = garment.pieces.flatMap(({ makes }) => makes[0]?.parts.flatMap((part) => part.rows) ?? []);
  const sizes = [...new Set(rows.map(({ needle }) => needle))].sort((a, b) => b - a);
  const said = sizes.map((mm) => {
    const other = number(mm);
    const own = `${needleIn(words, mm)} mm`;
    return other === undefined ? own : `${own} (${other})`;
  });
  return words.facts.needles(said);
}

/** A straight needle holds so wide a band at the most, mm; a longer one is worked in rows on a circular needle; common practice, no published source. */
const ON_STRAIGHT_MM = 500;
/** Circular needles as they are sold, cm; stitches are crowded on them to three quarters of their width; common practice, no published source. */
const CIRCULAR_CM = [60, 80, 100, 120, 150] as const;
const CROWDED = 0.75;

/** The bands with more stitches than a straight needle holds, on lines of their own: a small size may have none. */
function longNeedles({ garment }: WorkedSize, words: WrittenWords): string[] {
  const bands = garment.pieces.flatMap(({ recipe, makes }) => {
    const part = makes[0]?.parts[0];
    const row = part?.rows[0];
    if (!part || !row || !recipe.role?.endsWith('band')) return [];
    const wideMm = part.start * (part.cells[row.section]?.width ?? 0);
    if (wideMm <= ON_STRAIGHT_MM) return [];
    const cm = CIRCULAR_CM.find((length) => 10 * length >= CROWDED * wideMm) ?? CIRCULAR_CM[4];
    return [{ band: words.name(recipe.name), needle: `${needleIn(words, row.needle)} mm`, cm }];
  });
  const key = ({ needle, cm }: (typeof bands)[number]) => `${needle} ${cm}`;
  return bands.flatMap((one, i) => {
    const own = bands.filter((other) => key(other) === key(one));
    const names = own.map(({ band }) => band);
    return own[0] === bands[i] ? [words.facts.longNeedle(names, one.needle, one.cm)] : [];
  });
}

/** Buttons on a line of their own: a small size may have none. */
function notions({ steps, design }: WorkedSize, text: readonly string[], facts: FactWords): string[] {
  const buttons = steps.reduce((sum, step) => sum + buttonsOf(step), 0);
  const across = steps.some(({ kind }) => kind === 'buttons') ? design?.frontBand.buttonMm : undefined;
  const things = [
    ...(text.some((line) => facts.rests.test(line)) ? [facts.holders] : []),
    ...(steps.some(({ kind }) => kind === 'set in sleeves') ? [facts.markers] : []),
    facts.tapestryNeedle,
  ];
  return [facts.notions(things), ...(buttons > 0 ? [facts.buttons(buttons, across)] : [])];
}

function buttonsOf(step: MakingUpStep): number {
  if (step.kind === 'buttons') return step.stitches.length;
  return step.kind === 'opening' ? 1 : step.kind === 'lap' ? (step.buttons ?? 0) : 0;
}

/** A head of grown people, mm: below it a garment is a child's; common practice, no published source. */
const GROWN_HEAD_MM = 550;

/** Common practice, no published source. */
export function care({ design, steps }: WorkedSize, { facts, headings }: WrittenWords): WrittenSection {
  const lines = [...facts.care];
  // of what was not drafted nobody knows whom it is for
  if (design === undefined || design.body.head < GROWN_HEAD_MM) {
    const opens = steps.some(({ kind }) => kind === 'buttons' || kind === 'opening' || kind === 'lap');
    const isOpen = design ? garmentKinds[design.kind].open : false;
    lines.push(
      facts.forChild([
        facts.noCords,
        ...(opens ? [facts.buttonsHold] : []),
        ...(isOpen ? [] : [facts.overHead]),
      ]),
    );
  }
  return { title: headings.care, lines };
}
