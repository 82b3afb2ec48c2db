import { fault, ok, type Result, refuse } from '../fault.ts';
import type { Joint } from '../making-up/joint.ts';
import { abbreviationsIn } from './abbreviations.ts';
import { englishWritten } from './english.ts';
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
import { stripeLines } from './stripe-lines.ts';
import type { WorkedSize } from './work-size.ts';
import { gaugeLine, gaugesOf, pieceLines } from './write-pattern.ts';
import type { ListWords, WrittenWords } from './written-words.ts';

export interface WriteSizesOptions {
  /** those of US leaflets where nothing is said */
  readonly words?: WrittenWords;
  readonly units?: LengthUnits;
  /** beside the millimetres, in the list of needles */
  readonly needle?: NeedleNumber;
}

/**
 * The whole pattern in all sizes in the order of the trade, the smallest first and the others in parentheses behind it:
 * 'cast on 92 (100, 108) sts'; what only some sizes work stands on lines of their own. `readPattern` reads every size
 * of an English one back to its rows.
 * @returns the text; 'no sizes' where there is none
 */
export function writeSizes(
  sizes: readonly WorkedSize[],
  { words = englishWritten('US'), units = 'both', needle }: WriteSizesOptions = {},
): Result<string> {
  const [first] = sizes;
  if (first === undefined) return refuse(fault('no sizes'));
  const { facts, headings, list } = words;
  const names = sizes.map(({ size }) => words.size(size));
  const { name, credits, licence } = first.garment;
  const head = [name, ...(credits ? [facts.design(credits)] : []), ...sizesLine(names, list)];
  const length = saysLengthIn(units, words.point, words.inch);
  const all = (of: (size: WorkedSize) => readonly WrittenSection[]) =>
    mergeSections(sizes.map(of), names, list);
  const pieces = all((size) => pieceSections(size, words));
  const tension = gaugeLines(first, words, units);
  const striped = mergeTexts(
    sizes.map(({ coloured = [] }) => stripeLines(coloured, words)),
    names,
    list,
  );
  const blocks = [
    head,
    ...all((size) => [
      sizeAndFit(size, words, length),
      finishedMeasures(size, words, length),
      materials(size, pieces.flat(), words, needle),
    ]),
    ...(tension.length > 0 ? [[headings.gauge, ...tension]] : []),
    ...(striped.length > 0 ? [striped] : []),
    [headings.abbreviations, ...abbreviationsIn([...tension, ...pieces.flat()], words)],
    ...pieces,
    ...all((size) => [
      {
        title: headings.makingUp,
        lines: size.steps.flatMap((step) => makingUpLines(step, words.joining, length)),
      },
      care(size, words),
    ]),
    ...(licence ? [[headings.licence, facts.licence(licence)]] : []),
  ];
  return ok(`${blocks.map((lines) => lines.join('\n')).join('\n\n')}\n`);
}

function sizesLine(names: readonly string[], { sizes }: ListWords): string[] {
  const [first = '', ...others] = names;
  if (first === '' && others.length === 0) return [];
  return [sizes(names.length, others.length === 0 ? first : `${first} (${others.join(', ')})`)];
}

function pieceSections({ garment, made }: WorkedSize, words: WrittenWords): WrittenSection[] {
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

function gaugeLines({ garment }: WorkedSize, words: WrittenWords, units: LengthUnits): string[] {
  const washed = garment.swatches?.length ? ` ${words.facts.washed}` : '';
  return gaugesOf(garment).map((gauge, i) => `${gaugeLine(gauge, words, units)}${i === 0 ? washed : ''}`);
}

/** Section by section, in the order of the size that has most of them; two of one title are two sections. */
function mergeSections(
  sizes: readonly (readonly WrittenSection[])[],
  names: readonly string[],
  list: ListWords,
): string[][] {
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
      list,
    ),
  );
}
