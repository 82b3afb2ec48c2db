import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sourcesIn } from './sources.ts';
import { armsOf, below, type Node, parse } from './syntax.ts';

/** Which tests run which functions and branches, seen by marks set in a copy of the sources. */

/** One place that can be reached: a function or branch by where it begins, -1 for a module itself. */
export interface Place {
  readonly file: string;
  readonly within: number;
}

/** One test: its name, what it took of the processor with the marks, ms, and the numbers of the places that it reached. */
export interface ReachedByTest {
  readonly name: string;
  readonly ms: number;
  /** why it is red though nothing is planted; it is left out then */
  readonly red?: string | undefined;
  readonly hits: readonly number[];
}

/** One file of tests, its tests in their order, and what is reached while it is read and made ready. */
export interface ReachedByFile {
  readonly file: string;
  readonly whole: readonly number[];
  readonly tests: readonly ReachedByTest[];
}

/** Sets the marks in the copy at `root`, and gives the places in the order of the marks' numbers. */
export function markSources(root: string): Place[] {
  const places: Place[] = [];
  for (const file of sourcesIn(root)) {
    const path = join(root, file);
    writeFileSync(path, marked(file, readFileSync(path, 'utf8'), places));
  }
  return places;
}

function marked(file: string, source: string, places: Place[]): string {
  const inserts: { at: number; text: string }[] = [];
  const mark = (within: number): string => {
    places.push({ file, within });
    return `globalThis.__reached[${places.length - 1}] = 1`;
  };
  const visit = (node: Node): void => {
    for (const arm of armsOf(node)) inserts.push(...around(arm, mark(arm.start)));
    for (const child of below(node)) visit(child);
  };
  visit(parse(file, source));
  inserts.push({ at: 0, text: 'globalThis.__begins?.(); ' });
  inserts.push({ at: source.length, text: `\n${mark(-1)};\nglobalThis.__isRead?.('${file}');\n` });
  return inserts
    .sort((a, b) => b.at - a.at)
    .reduce((text, insert) => text.slice(0, insert.at) + insert.text + text.slice(insert.at), source);
}

/** A mark before what an arm does: in its braces, in braces of its own, or before a comma. */
function around({ type, start, end }: Node, mark: string): { at: number; text: string }[] {
  if (type === 'BlockStatement') return [{ at: start + 1, text: ` ${mark};` }];
  const [before, after] = type.endsWith('Statement') ? [`{ ${mark}; `, ' }'] : [`(${mark}, `, ')'];
  return [
    { at: start, text: before },
    { at: end, text: after },
  ];
}
