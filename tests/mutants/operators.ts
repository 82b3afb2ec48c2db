import { isNode, type Node } from './syntax.ts';

interface Change {
  readonly at: Pick<Node, 'start' | 'end'>;
  readonly after: string;
}

interface Around {
  readonly source: string;
  readonly parents: readonly Node[];
  readonly strings: readonly string[];
}

/** What can be changed in a node itself, not in what it holds. */
export function changesOf(node: Node, around: Around): Change[] {
  const change = table[node.type];
  return change === undefined ? [] : change(node, around);
}

type Changer = (node: Node, around: Around) => Change[];

const swapped: Record<string, string> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  '%': '*',
  '<': '<=',
  '<=': '<',
  '>': '>=',
  '>=': '>',
  '===': '!==',
  '!==': '===',
  '&&': '||',
  '||': '&&',
  '??': '&&',
  '+=': '-=',
  '-=': '+=',
  '++': '--',
  '--': '++',
};

const methods = new Map([
  ['min', 'max'],
  ['max', 'min'],
  ['floor', 'ceil'],
  ['ceil', 'floor'],
  ['round', 'floor'],
  ['some', 'every'],
  ['every', 'some'],
]);

/** Words of the craft that are each other's opposite; any other word is changed for the next one of its source. */
const opposites = new Map(
  [
    ['RS', 'WS'],
    ['right', 'left'],
    ['knit', 'purl'],
    ['k', 'p'],
    ['k2tog', 'ssk'],
    ['p2tog', 'ssp'],
    ['m1l', 'm1r'],
    ['start', 'end'],
    ['first', 'last'],
    ['width', 'height'],
  ].flatMap(([one = '', other = '']) => [
    [one, other],
    [other, one],
  ]),
);

const text = (node: unknown, { source }: Around): string =>
  isNode(node) ? source.slice(node.start, node.end) : '';

/** The sign between two operands, changed for its counterpart. */
const otherSign: Changer = (node, around) => {
  const { left, right, operator } = node as unknown as { left: Node; right: Node; operator: string };
  const other = swapped[operator];
  if (other === undefined) return [];
  if (operator === '+' && [left, right].some((side) => /^['`]/.test(text(side, around)))) return [];
  // beside each other, without brackets, the two are no program
  if (operator === '??' && [left, around.parents[0]].some((one) => one?.operator === '??'))
    return [{ at: node, after: `((${text(left, around)}) && (${text(right, around)}))` }];
  const at = left.end + around.source.slice(left.end, right.start).indexOf(operator);
  return [{ at: { start: at, end: at + operator.length }, after: other }];
};

/** A condition turned round; one that is a sign or a `!` by itself is turned round there. */
const negated: Changer = (node, around) =>
  isNode(node.test) && !['BinaryExpression', 'UnaryExpression'].includes(node.test.type)
    ? [{ at: node.test, after: `!(${text(node.test, around)})` }]
    : [];

const literal: Changer = (node, around) => {
  if (isForTheCompiler(node, around)) return [];
  const { value } = node;
  if (typeof value === 'boolean') return [{ at: node, after: String(!value) }];
  if (typeof value === 'number') return [{ at: node, after: String(value + 1) }];
  if (typeof value === 'string') return isKey(node, around) ? [] : otherWord(node, value, around);
  return node.regex === undefined ? [] : otherPattern(node, text(node, around));
};

/** What stands for an entry that a list always has, since the compiler cannot know it: `rows[0] ?? 0`, `[a = 0]`. */
function isForTheCompiler(node: Node, around: Around): boolean {
  const [parent, above] = around.parents;
  if (parent?.type === 'AssignmentPattern') return above?.type === 'ArrayPattern';
  return (
    parent?.type === 'LogicalExpression' &&
    parent.operator === '??' &&
    parent.right === node &&
    /\[|\.at\(|\.pop\(/.test(text(parent.left, around))
  );
}

/** What a field or another file is called by. */
const isKey = (node: Node, { parents: [parent] }: Around): boolean =>
  (parent?.type === 'Property' && parent.key === node) || /^(Ex|Im)port/.test(parent?.type ?? '');

function otherWord(node: Node, value: string, { strings }: Around): Change[] {
  const next = strings[(strings.indexOf(value) + 1) % Math.max(1, strings.length)];
  const other = opposites.get(value) ?? next;
  return other === undefined || other === value ? [] : [{ at: node, after: `'${other}'` }];
}

/** A pattern that takes more or less than it should. */
function otherPattern(node: Node, pattern: string): Change[] {
  const changed = [
    pattern.replace(/^\/\^/, '/'),
    pattern.replace(/\$(\/\w*)$/, '$1'),
    pattern.replace(/(?<=[\w)\]])\+/, '*'),
    pattern.replace(/(?<=[\w)\]])\*/, '+'),
    pattern.replace(/(?<=[\w)\]])\?/, ''),
    pattern.replace(/i(\w*)$/, '$1'),
  ];
  return [...new Set(changed)].filter((other) => other !== pattern).map((after) => ({ at: node, after }));
}

const isSimple = (node: Node): boolean => ['Identifier', 'MemberExpression', 'Literal'].includes(node.type);

/** The greatest of two is the same, whichever comes first. */
const isOfAnyOrder = (callee: Node, around: Around): boolean =>
  /^Math\.(min|max|hypot)$/.test(text(callee, around));

const call: Changer = (node, around) => {
  const { callee, arguments: given } = node as unknown as { callee: Node; arguments: Node[] };
  const changes: Change[] = [];
  const [one, other] = given;
  if (
    one !== undefined &&
    other !== undefined &&
    isSimple(one) &&
    isSimple(other) &&
    !isOfAnyOrder(callee, around)
  )
    changes.push({
      at: { start: one.start, end: other.end },
      after: `${text(other, around)}, ${text(one, around)}`,
    });
  const { property, object } = callee;
  if (callee.type !== 'MemberExpression' || !isNode(property) || !isNode(object)) return changes;
  const method = text(property, around);
  const after = methods.get(method);
  if (after !== undefined) changes.push({ at: property, after });
  if (['filter', 'reverse', 'slice', 'trim', 'sort'].includes(method))
    changes.push({ at: node, after: text(object, around) });
  return changes;
};

const table: Record<string, Changer> = {
  BinaryExpression: otherSign,
  LogicalExpression: otherSign,
  AssignmentExpression: otherSign,
  UpdateExpression: (node, around) => [
    { at: node, after: text(node, around).replace(/\+\+|--/, (sign) => swapped[sign] ?? sign) },
  ],
  UnaryExpression: (node, around) =>
    node.operator === '!' || node.operator === '-' ? [{ at: node, after: text(node.argument, around) }] : [],
  IfStatement: negated,
  ConditionalExpression: negated,
  WhileStatement: negated,
  Literal: literal,
  ReturnStatement: (node) =>
    isNode(node.argument) && node.argument.type !== 'Literal'
      ? [{ at: node.argument, after: 'undefined' }]
      : [],
  ArrowFunctionExpression: ({ body }) =>
    isNode(body) && body.type !== 'BlockStatement' && body.type !== 'Literal'
      ? [{ at: body, after: 'undefined' }]
      : [],
  ExpressionStatement: (node) =>
    isNode(node.expression) &&
    ['CallExpression', 'AssignmentExpression', 'AwaitExpression'].includes(node.expression.type)
      ? [{ at: node, after: ';' }]
      : [],
  CallExpression: call,
  SpreadElement: (node, { parents: [parent] }) =>
    parent?.type === 'ObjectExpression' || parent?.type === 'ArrayExpression'
      ? [{ at: node.argument as Node, after: parent.type === 'ObjectExpression' ? '{}' : '[]' }]
      : [],
};
