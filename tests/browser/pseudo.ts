import type { Page } from 'playwright-core';
import { parseAst } from 'vite';

/**
 * A language for tests alone: French in the letters of one that is written from right to left, its words a quarter
 * longer still: some 40 % longer than English, since French is a sixth longer already. What the browser fetches is changed on its way, so the app is
 * the built one.
 */

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [field: string]: unknown;
}

/** Where a text is no word of hers: the name of a file, of a field, or what is asked for. */
const notSaid: Readonly<Record<string, readonly string[]>> = {
  ImportDeclaration: ['source'],
  ImportExpression: ['source'],
  Property: ['key'],
  BinaryExpression: ['left', 'right'],
  SwitchCase: ['test'],
  MemberExpression: ['property'],
};

const LONGER = 1.25;

/** 27 letters that run from right to left. */
const letters = [...'אבגדהוזחטיךכלםמןנסעףפץצקרשת'];

function inOtherLetters(word: string): string {
  const plain = word.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const turned = [...plain].map((letter) => letters[(letter.codePointAt(0) ?? 0) % letters.length] ?? letter);
  const more = word.length < 4 ? 0 : Math.round(word.length * (LONGER - 1));
  return [...turned, ...turned.slice(0, more)].join('');
}

/** What stands in braces is put in later, and stays; so do signs that a script's text is written with. */
const pseudoText = (raw: string): string =>
  raw.replaceAll(/\{\w+\}|\\(?:x..|u.{4}|.)|[\p{L}\p{M}]+/gu, (one) =>
    /^[{\\]/.test(one) ? one : inOtherLetters(one),
  );

/** A built file of words, as this language has it. */
export function pseudoWords(code: string): string {
  const said: Node[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) value.forEach(visit);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return;
    const node = value as Node;
    if (node.type === 'TemplateElement' || (node.type === 'Literal' && typeof node.value === 'string'))
      said.push(node);
    const passed = notSaid[node.type] ?? [];
    for (const [field, inside] of Object.entries(node)) if (!passed.includes(field)) visit(inside);
  };
  visit(parseAst(code));
  let text = code;
  for (const { start, end } of said.sort((a, b) => b.start - a.start))
    text = text.slice(0, start) + pseudoText(text.slice(start, end)) + text.slice(end);
  return text;
}

/** Has a page that is opened with a French system speak it. */
export async function speakPseudo(page: Page): Promise<void> {
  const change = (files: RegExp, made: (code: string) => string) =>
    page.route(files, async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: made(await answer.text()) });
    });
  await change(/\/(?:first-)?words-fr-[\w-]+\.js$/, pseudoWords);
  await change(/\/row-in-hand-[\w-]+\.js$/, (code) => {
    const turned = code.replace(/locale:(["'`])fr-FR\1/, (locale) => `${locale},direction:"rtl"`);
    if (turned === code) throw new Error('French is not in the first script.');
    return turned;
  });
}
