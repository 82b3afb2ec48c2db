import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { sourcesIn } from './sources.ts';
import { below, isFunction, type Node, parse } from './syntax.ts';

/** Which tests call which functions, seen by marks set in a copy of the sources. */

/** One place that can be reached: a function by where its body begins, -1 for a module itself. */
export interface Place {
  readonly file: string;
  readonly within: number;
}

/** What one test did: its file, its name as the runner gives it, how long it took, the places it reached. */
export interface Reached {
  readonly file: string;
  /** undefined for what is done while the file is read and between its tests */
  readonly test: string | undefined;
  readonly ms: number;
  readonly places: readonly number[];
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
    const body = node.body as Node;
    if (isFunction(node) && body.type === 'BlockStatement')
      inserts.push({ at: body.start + 1, text: ` ${mark(body.start)};` });
    else if (isFunction(node))
      inserts.push({ at: body.start, text: `(${mark(body.start)}, ` }, { at: body.end, text: ')' });
    for (const child of below(node)) visit(child);
  };
  visit(parse(file, source));
  inserts.push({ at: source.length, text: `\n${mark(-1)};\n` });
  return inserts
    .sort((a, b) => b.at - a.at)
    .reduce((text, insert) => text.slice(0, insert.at) + insert.text + text.slice(insert.at), source);
}
