import { changesOf } from './operators.ts';
import { armsOf, below, type Node, noProgram, parse } from './syntax.ts';

/** One change of one source, small enough to be read at a glance. */
export interface Mutant {
  readonly file: string;
  readonly line: number;
  /** where the function or branch begins that it stands in, which says what tests reach it; -1 for the module itself */
  readonly within: number;
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly after: string;
  /** the whole expression or statement that is changed by it: one or the other can be chosen while it runs */
  readonly whole: Whole;
}

export interface Whole {
  readonly start: number;
  readonly end: number;
  readonly kind: 'expression' | 'statement' | 'attribute' | 'key';
}

/** All the mutants of one source, in the order of their places. */
export function mutantsOf(file: string, source: string): Mutant[] {
  const found: Mutant[] = [];
  const strings = stringsOf(source);
  const visit = (node: Node, within: number, parents: readonly Node[]): void => {
    for (const { at, after } of changesOf(node, { source, parents, strings })) {
      if (source.slice(at.start, at.end) === after) continue;
      found.push({
        whole: wholeOf(at, node, parents),
        file,
        line: source.slice(0, at.start).split('\n').length,
        within,
        start: at.start,
        end: at.end,
        before: source.slice(at.start, at.end),
        after,
      });
    }
    const arms = armsOf(node);
    for (const child of below(node))
      visit(child, arms.includes(child) ? child.start : within, [node, ...parents]);
  };
  visit(parse(file, source), -1, []);
  return found;
}

const ofStatements = new Set(['IfStatement', 'WhileStatement', 'ReturnStatement', 'ArrowFunctionExpression']);

/** What stands for the change as a whole: the changed node; for a sign or a method the node that it belongs to. */
function wholeOf(at: Pick<Node, 'start' | 'end'>, node: Node, parents: readonly Node[]): Whole {
  const [parent] = parents;
  const span = ({ start, end }: Pick<Node, 'start' | 'end'>, kind: Whole['kind']) => ({ start, end, kind });
  if (node.type === 'ExpressionStatement') return span(node, 'statement');
  if (ofStatements.has(node.type) || node.type === 'SpreadElement' || node.type === 'ConditionalExpression')
    return span(at, 'expression');
  if (parent?.type === 'JSXAttribute') return span(node, 'attribute');
  if (parent?.type === 'Property' && parent.key === node && parent.computed !== true)
    return span(node, 'key');
  return span(chainOf(node, parents), 'expression');
}

/** A part of `a?.b.c()` that comes first cannot be put in brackets by itself: what follows would not be left out. */
function chainOf(node: Node, parents: readonly Node[]): Node {
  let part = node;
  for (const parent of parents) {
    if (parent.type === 'ChainExpression') return parent;
    if (parent.object !== part && parent.callee !== part) return node;
    part = parent;
  }
  return node;
}

/** The short words that a source has between quotes: one is put in another's place. */
const stringsOf = (source: string): string[] => [
  ...new Set([...source.matchAll(/(?<!from )'([a-z][\w -]{0,30})'/gi)].map(([, word = '']) => word)),
];

export const plant = (source: string, { start, end, after }: Mutant): string =>
  source.slice(0, start) + after + source.slice(end);

/** A source that holds many mutants, of which that one is alive whose number stands in `globalThis.__mutant`. */
export function plantAll(source: string, mutants: ReadonlyMap<number, Mutant>): string {
  const inserts = [...mutants].flatMap(([id, mutant]) => {
    const { start, end, kind } = mutant.whole;
    const changed = source.slice(start, mutant.start) + mutant.after + source.slice(mutant.end, end);
    const isAlive = `globalThis.__mutant === ${id}`;
    const [before, after] =
      kind === 'statement'
        ? [`{ if (${isAlive}) { ${changed} } else { `, ' } }']
        : [`(${isAlive} ? (${changed}) : (`, '))'];
    const [open, close] = kind === 'attribute' ? ['{', '}'] : kind === 'key' ? ['[', ']'] : ['', ''];
    return [
      { at: start, order: -end, id, text: open + before },
      { at: end, order: Number.POSITIVE_INFINITY, id, text: after + close },
    ];
  });
  let text = '';
  let last = 0;
  const [opening, closing] = [1, 0];
  const rank = ({ order }: { order: number }) => (order === Number.POSITIVE_INFINITY ? closing : opening);
  // what begins at one place: the longest first; what ends there: all alike; what ends before what begins
  for (const insert of inserts.sort(
    (a, b) => a.at - b.at || rank(a) - rank(b) || (rank(a) === opening ? a.order - b.order : 0),
  )) {
    text += source.slice(last, insert.at) + insert.text;
    last = insert.at;
  }
  return text + source.slice(last);
}

/** As above, for a source that is to be worked: throws the names of those that are no programs. */
export function plantPrograms(file: string, source: string, mutants: ReadonlyMap<number, Mutant>): string {
  const planted = plantAll(source, mutants);
  const why = noProgram(file, planted);
  if (why === undefined) return planted;
  const alone = [...mutants].filter((one) => noProgram(file, plantAll(source, new Map([one]))) !== undefined);
  const names = alone.map(([, { line, before, after }]) => `${file}:${line} ${before} -> ${after}`);
  throw new Error(`No program: ${names.join(', ') || file} (${why})`);
}
