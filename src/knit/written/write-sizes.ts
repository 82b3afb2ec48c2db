import { fault, ok, type Result, refuse } from '../fault.ts';
import type { Joint } from '../making-up/joint.ts';
import type { Terms } from '../row/row-words.ts';
import { abbreviationsIn } from './abbreviations.ts';
import { makingUpLines } from './making-up-lines.ts';
import { mergeTexts } from './merge-sizes.ts';
import { type LengthUnits, saysLengthIn } from './says-length.ts';
import {
  care,
  finishedMeasures,
  materials,
  type NeedleNumber,
  sizeAndFit,
  type WrittenSection,
} from './sections.ts';
import type { WorkedSize } from './work-size.ts';
import { gaugeLine, pieceLines, rowLineWords } from './write-pattern.ts';

export interface WriteSizesOptions {
  readonly terms?: Terms;
  readonly units?: LengthUnits;
  /** beside the millimetres, in the list of needles */
  readonly needle?: NeedleNumber;
}

/**
 * The whole pattern in all sizes in the order of the trade, the smallest first and the others in parentheses behind it:
 * 'cast on 92 (100, 108) sts'; what only some sizes work stands on lines of their own. `readPattern` reads every size
 * back to its rows.
 * @returns the text; 'no sizes' where there is none
 */
export function writeSizes(
  sizes: readonly WorkedSize[],
  { terms = 'US', units = 'both', needle }: WriteSizesOptions = {},
): Result<string> {
  const [first] = sizes;
  if (first === undefined) return refuse(fault('no sizes'));
  const names = sizes.map(({ size }) => size);
  const { name, credits, licence } = first.garment;
  const head = [name, ...(credits ? [`Design: ${credits}`] : []), ...sizesLine(names)];
  const length = saysLengthIn(units);
  const all = (of: (size: WorkedSize) => readonly WrittenSection[]) => mergeSections(sizes.map(of), names);
  const pieces = all((size) => pieceSections(size, terms));
  const tension = gaugeLines(first, terms);
  const blocks = [
    head,
    ...all((size) => [
      sizeAndFit(size, length),
      finishedMeasures(size, length),
      materials(size, pieces.flat(), needle),
    ]),
    ...(tension.length > 0 ? [[terms === 'US' ? 'GAUGE' : 'TENSION', ...tension]] : []),
    ['ABBREVIATIONS', ...abbreviationsIn([...tension, ...pieces.flat()])],
    ...pieces,
    ...all((size) => [
      { title: 'MAKING UP', lines: size.steps.flatMap((step) => makingUpLines(step, terms, length)) },
      care(size),
    ]),
    ...(licence ? [['LICENCE', `Licence: ${licence}`]] : []),
  ];
  return ok(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}

function sizesLine(names: readonly string[]): string[] {
  const [first = '', ...others] = names;
  return others.length === 0
    ? first === ''
      ? []
      : [`Size: ${first}`]
    : [`Sizes: ${first} (${others.join(', ')})`];
}

function pieceSections({ garment, made }: WorkedSize, terms: Terms): WrittenSection[] {
  const words = rowLineWords(terms);
  return garment.pieces.map(({ recipe, makes }) => {
    const parts = makes[0]?.parts ?? [];
    const isTopDown = made.joints.some((joint) => endsWithCuff(joint, recipe.name));
    const [title = '', ...lines] = pieceLines(recipe, { parts }, words, isTopDown);
    return { title, lines };
  });
}

const endsWithCuff = (joint: Joint, piece: string): boolean =>
  joint.kind === 'left free' &&
  joint.as === 'cuff' &&
  joint.line.some((stretch) => stretch.piece === piece && stretch.edge === 'top');

function gaugeLines({ garment: { pieces, swatches } }: WorkedSize, terms: Terms): string[] {
  const gauge = pieces.find(({ recipe }) => recipe.gauge)?.recipe.gauge;
  if (!gauge) return [];
  return [`${gaugeLine(gauge, terms)}${swatches?.length ? ' Measured washed and dry.' : ''}`];
}

/** Section by section, in the order of the size that has most of them; two of one title are two sections. */
function mergeSections(sizes: readonly (readonly WrittenSection[])[], names: readonly string[]): string[][] {
  const keyed = sizes.map((sections) => {
    const told = sections.filter(({ lines }) => lines.length > 0);
    const nth = (title: string, i: number) => told.slice(0, i).filter((one) => one.title === title).length;
    return new Map(told.map(({ title, lines }, i) => [`${title} ${nth(title, i)}`, [title, ...lines]]));
  });
  const most = [...keyed].sort((a, b) => b.size - a.size);
  const keys = new Set(most.flatMap((sections) => [...sections.keys()]));
  return [...keys].map((key) =>
    mergeTexts(
      keyed.map((sections) => sections.get(key) ?? []),
      names,
    ),
  );
}
