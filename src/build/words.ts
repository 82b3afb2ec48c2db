import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { type Plugin, parseAst } from 'vite';
import { languageOfPath } from '../words/languages.ts';

/**
 * The names of messages would take a fourth of the room that the words take, in every language, and stand wherever one
 * is said. In the build a message has a number instead: its place in the English catalogue. Names that the app puts
 * together while it runs (`count.${tool}`, a fault's code) are kept, once for all languages. In tests and under
 * `npm run dev` all messages are found by their names.
 */

/** One catalogue. */
export interface Numbered {
  /** the names of its messages: a message's number is its place here */
  readonly order: readonly string[];
  /** those of them that the app puts together; they come first */
  readonly kept: readonly string[];
}

/** By the catalogue's name: 'recipeFaults' is the one in recipe-faults.ts. */
export type Numbers = ReadonlyMap<string, Numbered>;

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

/** All that a text in TypeScript or JavaScript is made of, in its order. */
function nodesOf(code: string, path: string): readonly Node[] {
  const found: Node[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    else if (typeof value === 'object' && value !== null) {
      if ('type' in value) found.push(value as Node);
      Object.values(value).forEach(visit);
    }
  };
  visit(parseAst(code, { lang: path.endsWith('x') ? 'tsx' : 'ts' }));
  return found;
}

const catalogueOf = (path: string): string =>
  basename(path, '.ts').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());

interface Written {
  /** each message as it is written, by its name */
  readonly messages: ReadonlyMap<string, string>;
  readonly start: number;
  readonly end: number;
}

/** The messages in a catalogue's file; none in another. */
function messagesIn(code: string): Written | undefined {
  const declared = nodesOf(code, '.ts').find(
    ({ type, id }) => type === 'VariableDeclarator' && (id as { name?: string }).name === 'words',
  );
  if (declared === undefined) return undefined;
  let object = declared.init as Node;
  while (object.type !== 'ObjectExpression') object = object.expression as Node;
  const messages = (object.properties as readonly Node[]).map(({ key, value }): [string, string] => {
    const { name, value: quoted } = key as { readonly name?: string; readonly value?: string };
    const { start, end } = value as Node;
    return [name ?? quoted ?? '', code.slice(start, end)];
  });
  return { messages: new Map(messages), start: object.start, end: object.end };
}

/**
 * What the names are like that a file puts together, as patterns of 'catalogue.name'. What a file asks for by
 * `sayIfKnown` has a name that the file begins with a word of its own (`cause ${cause}`), or any name of its catalogue.
 */
export function putTogether(code: string, path: string): readonly RegExp[] {
  if (!/`(\w+\.|\$\{)|sayIfKnown/.test(code)) return [];
  const nodes = nodesOf(code, path);
  const made = nodes
    .filter(({ type }) => type === 'TemplateLiteral')
    .map(({ quasis }) =>
      (quasis as { readonly value: { readonly cooked: string } }[]).map(({ value }) => value.cooked),
    )
    .filter((parts) => parts.length > 1);
  const templates = made.filter(
    ([first = '', next = '']) => /^\w+\./.test(first) || (first === '' && /^\.\w/.test(next)),
  );
  const asked = nodes
    .filter(
      ({ type, callee }) => type === 'CallExpression' && (callee as { name?: string }).name === 'sayIfKnown',
    )
    .map((call) => (call.arguments as readonly { readonly value?: string }[])[0]?.value)
    .filter((catalogue) => catalogue !== undefined)
    .flatMap((catalogue) => {
      const said = made.filter(([first = '']) => /^[a-z]+ $/.test(first));
      return said.length === 0
        ? [[`${catalogue}.`, '']]
        : said.map(([first, ...rest]) => [`${catalogue}.${first}`, ...rest]);
    });
  return [...templates, ...asked].map((parts) => new RegExp(`^${parts.map(escaped).join('.*')}$`));
}

/** The pattern of a catalogue that a file asks for any name. */
const anyOf = (catalogue: string): string => new RegExp(`^${catalogue}\\..*$`).source;

/**
 * Whether a message is only ever said by its whole name as it is written: where a catalogue is asked for any name, what
 * it is asked for is a word of the craft (src/knit/) or one that stands quoted somewhere.
 */
function onlyWritten(code: ReadonlyMap<string, string>) {
  const all = [...code.values()].join('\n');
  const craft = [...code].flatMap(([path, file]) => (path.startsWith('knit/') ? [file] : [])).join('\n');
  const words = new Set([
    ...(craft.match(/\w+/g) ?? []),
    ...[...all.matchAll(/['"`](\w+)['"`]/g)].map(([, word]) => word),
  ]);
  return (catalogue: string, name: string): boolean =>
    /^\w+$/.test(name) && !words.has(name) && all.includes(`'${catalogue}.${name}'`);
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const anyCode = /\/src\/(?!build\/)[^?]*\.tsx?$/;
const isOurs = (path: string): boolean => anyCode.test(path) && languageOfPath(path) === undefined;
const isCatalogue = (path: string): boolean => anyCode.test(path) && languageOfPath(path) !== undefined;

/** The app's own code, but for its words: each file's by its path. */
export const codeOfTheApp = (): ReadonlyMap<string, string> =>
  new Map(
    readdirSync('src', { recursive: true, encoding: 'utf8' })
      .filter((path) => isOurs(`/src/${path}`))
      .map((path) => [path, readFileSync(join('src', path), 'utf8')]),
  );

/** Numbers all messages. */
export function numbersOf(code: ReadonlyMap<string, string>): Numbers {
  const patterns = [...code].flatMap(([path, file]) => putTogether(file, path));
  const isOnlyWritten = onlyWritten(code);
  const isKept = (catalogue: string, name: string): boolean =>
    // by their codes, which are no part of a template
    catalogue.endsWith('Faults') ||
    patterns.some(
      (pattern) =>
        pattern.test(`${catalogue}.${name}`) &&
        !(pattern.source === anyOf(catalogue) && isOnlyWritten(catalogue, name)),
    );
  const numbers = new Map<string, Numbered>();
  for (const file of readdirSync('src/words/en')) {
    const written = messagesIn(readFileSync(join('src/words/en', file), 'utf8'));
    if (written === undefined) continue;
    const names = [...written.messages.keys()];
    const kept = names.filter((name) => isKept(catalogueOf(file), name));
    const order = [...kept, ...names.filter((name) => !kept.includes(name))];
    numbers.set(catalogueOf(file), { order, kept });
  }
  return numbers;
}

const namesOf = '/src/words/names-of/';

/** A catalogue's file with a list for its names and messages. Throws where the language lacks one. */
export function numberedCatalogue(code: string, path: string, numbers: Numbers): string | undefined {
  const numbered = numbers.get(catalogueOf(path));
  const written = messagesIn(code);
  if (numbered === undefined || written === undefined) return undefined;
  const list = numbered.order.map((name) => {
    const message = written.messages.get(name);
    if (message === undefined) throw new Error(`${path} has no message '${name}'.`);
    return message;
  });
  const words = `[${list.join(',')}]`;
  const [before, after] = [code.slice(0, written.start), code.slice(written.end)];
  return numbered.kept.length === 0
    ? `${before}${words}${after}`
    : `import named from '${namesOf}${catalogueOf(path)}';${before}named(${words})${after}`;
}

/** Gives the first messages of a catalogue their names, beside their numbers. */
export const named =
  (names: readonly string[]) =>
  (list: readonly unknown[]): Record<string, unknown> => ({
    ...list,
    ...Object.fromEntries(names.map((name, i) => [name, list[i]])),
  });

/** Whether a code may say a message by its name: most says none, and to take one apart takes long. */
const maySay = (code: string, numbers: Numbers): boolean =>
  [...code.matchAll(/['"](\w+)\./g)].some(([, catalogue = '']) => numbers.has(catalogue));

/** Code with numbers for the names of messages; undefined where none is said. */
export function numberedCode(code: string, path: string, numbers: Numbers): string | undefined {
  if (!maySay(code, numbers)) return undefined;
  let changed = code;
  for (const { type, value, start, end } of [...nodesOf(code, path)].reverse()) {
    if (type !== 'Literal' || typeof value !== 'string') continue;
    const [catalogue = '', ...name] = value.split('.');
    const number = numbers.get(catalogue)?.order.indexOf(name.join('.')) ?? -1;
    if (number >= 0) changed = `${changed.slice(0, start)}'${catalogue}.${number}'${changed.slice(end)}`;
  }
  return changed === code ? undefined : changed;
}

let numbers: Numbers = new Map();

export const words: Plugin = {
  name: 'numbered-words',
  apply: 'build',
  // when the types are gone
  enforce: 'post',
  buildStart() {
    numbers = numbersOf(codeOfTheApp());
  },
  resolveId: (id) => (id.startsWith(namesOf) ? `\0${id}` : null),
  load(id) {
    if (!id.startsWith(`\0${namesOf}`)) return null;
    const { kept = [] } = numbers.get(id.slice(namesOf.length + 1)) ?? {};
    return `export default (${named.toString()})(${JSON.stringify(kept)});`;
  },
  transform(code, id) {
    const changed = isCatalogue(id)
      ? numberedCatalogue(code, id, numbers)
      : isOurs(id)
        ? numberedCode(code, '.js', numbers)
        : undefined;
    return changed === undefined ? null : { code: changed, map: null };
  },
};
