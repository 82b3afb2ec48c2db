import { parseSync } from 'vite';

/** A node of a parsed source: what every kind has in common, its further fields by name. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

export const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

/** What keeps a source from being a program, if anything does. */
export const noProgram = (path: string, source: string): string | undefined =>
  parseSync(path, source).errors[0]?.message;

export function parse(path: string, source: string): Node {
  const { program, errors } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  return program as unknown as Node;
}

/** The nodes right below one that hold code which runs: types, imports and what an error says are left out. */
export function below(node: Node): Node[] {
  if (leftOut.has(node.type) || (node.type.startsWith('TS') && !wrappers.has(node.type))) return [];
  if (wrappers.has(node.type)) return [node.expression].filter(isNode);
  return Object.entries(node)
    .filter(([field]) => !types.has(field))
    .flatMap(([, value]) => (Array.isArray(value) ? value : [value]))
    .filter(isNode)
    .filter(({ type }) => wrappers.has(type) || !type.startsWith('TS'));
}

const leftOut = new Set(['ImportDeclaration', 'ExportAllDeclaration', 'ThrowStatement', 'TemplateElement']);
const wrappers = new Set(['TSAsExpression', 'TSSatisfiesExpression', 'TSNonNullExpression']);
const types = new Set([
  'typeAnnotation',
  'typeArguments',
  'typeParameters',
  'returnType',
  'superTypeArguments',
]);

/** Which fields of a node hold what may never be run though the node is: bodies, branches, what comes after a `&&`. */
const mayBeLeft: Record<string, readonly string[]> = {
  FunctionDeclaration: ['body'],
  FunctionExpression: ['body'],
  ArrowFunctionExpression: ['body'],
  IfStatement: ['consequent', 'alternate'],
  ConditionalExpression: ['consequent', 'alternate'],
  LogicalExpression: ['right'],
  ForStatement: ['body'],
  ForOfStatement: ['body'],
  WhileStatement: ['body'],
};

/** The parts of a node that may never be run though the node is. Each begins at a place of its own. */
export const armsOf = (node: Node): Node[] =>
  (mayBeLeft[node.type] ?? []).map((field) => node[field]).filter(isNode);
