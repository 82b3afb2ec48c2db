import { changesOf } from './operators.ts';
import { below, isFunction, type Node, parse } from './syntax.ts';

/** One change of one source, small enough to be read at a glance. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** where the function begins that it stands in, which says what tests reach it; -1 for the module itself */
  readonly within: number;
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly after: string;
}

/** All the mutants of one source, in the order of their places. */
export function mutantsOf(file: string, source: string): Mutant[] {
  const found: Mutant[] = [];
  const strings = stringsOf(source);
  const visit = (node: Node, within: number, parents: readonly Node[]): void => {
    for (const { at, after } of changesOf(node, { source, parents, strings }))
      found.push({
        file,
        line: source.slice(0, at.start).split('\n').length,
        within,
        start: at.start,
        end: at.end,
        before: source.slice(at.start, at.end),
        after,
      });
    const inside = isFunction(node) ? (node.body as Node).start : within;
    for (const child of below(node)) visit(child, inside, [node, ...parents]);
  };
  visit(parse(file, source), -1, []);
  return found;
}

/** The short words that a source has between quotes: one is put in another's place. */
const stringsOf = (source: string): string[] => [
  ...new Set([...source.matchAll(/(?<!from )'([a-z][\w -]{0,30})'/gi)].map(([, word = '']) => word)),
];

export const plant = (source: string, { start, end, after }: Mutant): string =>
  source.slice(0, start) + after + source.slice(end);
