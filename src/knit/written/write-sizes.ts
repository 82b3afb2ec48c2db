import { fault, ok, type Result, refuse } from '../fault.ts';
import type { Garment } from '../piece/garment.ts';
import { type WriteOptions, writePattern } from './write-pattern.ts';

/** The same garment in one size. */
export interface Sized {
  readonly size: string;
  readonly garment: Garment;
}

/**
 * One text for all sizes, the smallest first and the others in parentheses behind it: 'cast on 92 (100, 108) sts'.
 * @returns the text, the planner's faults, or 'sizes worked differently' with the first line in which the sizes are not worked
 *   alike (another rhythm of shaping, say): those are better written one by one
 */
export function writeSizes(sizes: readonly Sized[], options: WriteOptions = {}): Result<string> {
  const texts: string[][] = [];
  for (const { garment } of sizes) {
    const written = writePattern(garment, options);
    if (!written.ok) return written;
    texts.push(written.value.split('\n'));
  }
  const [first] = texts;
  if (first === undefined) return refuse(fault('no sizes'));
  if (sizes.length === 1) return ok(first.join('\n'));
  const longest = Math.max(...texts.map((lines) => lines.length));
  const merged: string[] = [];
  for (let i = 0; i < longest; i += 1) {
    const line = mergeLine(texts.map((lines) => lines[i]));
    if (line === undefined) return refuse(differs(i + 1, first[i] ?? ''));
    merged.push(line);
  }
  const [title = '', ...rest] = merged;
  return ok([title, sizesLine(sizes), ...rest].join('\n'));
}

function sizesLine(sizes: readonly Sized[]): string {
  const [first = '', ...others] = sizes.map(({ size }) => size);
  return `Sizes ${first} (${others.join(', ')})`;
}

const differs = (line: number, text: string) => fault('sizes worked differently', { line, text });

const NUMBER = /\d+(?:\.\d+)?/g;

/** A line in which only numbers differ; undefined where more does. */
function mergeLine(lines: readonly (string | undefined)[]): string | undefined {
  const skeletons = new Set(lines.map((line) => line?.replace(NUMBER, '#')));
  const [first] = lines;
  if (skeletons.size !== 1 || first === undefined) return undefined;
  const numbers = lines.map((line) => line?.match(NUMBER) ?? []);
  let at = 0;
  return first.replace(NUMBER, (own) => {
    const all = numbers.map((list) => list[at] ?? own);
    at += 1;
    return new Set(all).size === 1 ? own : `${own} (${all.slice(1).join(', ')})`;
  });
}
