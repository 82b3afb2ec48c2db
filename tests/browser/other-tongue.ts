import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { sampleGarment } from '../../src/knit/garment/sample.ts';

/** A message as it stands in a catalogue: a sentence, or one for each plural. */
type Message = string | Readonly<Record<string, string>>;

const folder = (tag: string) => join('src', 'words', tag);

/** Messages of a language by file and key, each form of a plural beside its own. */
async function messagesOf(tag: string): Promise<ReadonlyMap<string, string>> {
  const all = new Map<string, string>();
  for (const file of readdirSync(folder(tag)).filter((name) => name.endsWith('.ts'))) {
    const module = (await import(/* @vite-ignore */ pathToFileURL(join(folder(tag), file)).href)) as {
      readonly words?: Readonly<Record<string, Message>>;
    };
    for (const [key, message] of Object.entries(module.words ?? {}))
      for (const [form, text] of typeof message === 'string' ? [['', message]] : Object.entries(message))
        if (typeof text === 'string') all.set(`${file} ${key} ${form}`, text);
  }
  return all;
}

const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const flat = (text: string) => text.replace(/[\s\u00a0\u202f]+/g, ' ').trim();

/** Whether a text is a message with anything for its figures; its longest words are looked for first, which is quick. */
function matcherOf(message: string): (text: string) => boolean {
  const bits = flat(message).split(/\{[^}]*\}/);
  if (bits.length === 1) return (text) => text === bits[0];
  const longest = [...bits].sort((a, b) => b.length - a.length)[0] ?? '';
  const pattern = new RegExp(`^${bits.map(escaped).join('.+')}$`, 'u');
  return (text) => text.includes(longest) && pattern.test(text);
}

/** Asks of a text shown in a language which English message it is, where that language says it otherwise. */
export async function englishIn(tag: string): Promise<(shown: string) => string | undefined> {
  const [english, own] = await Promise.all([messagesOf('en'), messagesOf(tag)]);
  const said = new Set([...own.values()].map(flat));
  const isOwn = [...said].filter((text) => text.includes('{')).map(matcherOf);
  const foreign = [...english]
    .filter(([key, text]) => own.get(key) !== text && !said.has(flat(text)))
    // of figures alone, or of one short word, nothing is told apart
    .filter(([, text]) => /\p{L}{3}/u.test(text.replace(/\{[^}]*\}/g, '')))
    .map(([key, text]) => ({ key, is: matcherOf(text) }));
  const look = (text: string): string | undefined => {
    if (said.has(text) || isOwn.some((is) => is(text))) return undefined;
    const found = foreign.find(({ is }) => is(text));
    return found && `“${text}” is ${found.key}`;
  };
  const known = new Map<string, string | undefined>();
  return (shown) => {
    const text = flat(shown);
    if (!known.has(text)) known.set(text, look(text));
    return known.get(text);
  };
}

/** Every text that lies in the box, and the sample's own: names and notes stay as they were written. */
export async function ownTexts(page: Page): Promise<ReadonlySet<string>> {
  const stored = await page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const db = await answer(indexedDB.open(document.documentElement.dataset.box ?? ''));
    const names = ['garments', 'plans'].filter((name) => db.objectStoreNames.contains(name));
    const all = await Promise.all(
      names.map((name) => answer(db.transaction(name).objectStore(name).getAll())),
    );
    db.close();
    return JSON.stringify(all);
  });
  const texts = `${stored}${JSON.stringify(sampleGarment)}`.match(/"(?:[^"\\]|\\.)*"/g) ?? [];
  return new Set(texts.map((text) => flat(JSON.parse(text) as string)));
}

/** Each text of a page that is seen or read aloud, once; what is typed in a field is not asked for. */
export const textsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const root = document.querySelector('dialog[open]') ?? document.body;
    const texts = new Set<string>();
    const add = (text: string | null | undefined) => {
      if (text && /\p{L}{2}/u.test(text)) texts.add(text);
    };
    for (const one of root.querySelectorAll('*')) {
      if (!one.checkVisibility() || one.closest('textarea, pre, code, [lang]:not(html)')) continue;
      // what was read aloud before the language was changed is not said again
      if (one.closest('.spoken[role=status]')) continue;
      for (const said of ['aria-label', 'placeholder', 'title', 'aria-valuetext', 'aria-roledescription'])
        add(one.getAttribute(said));
      const own = [...one.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE);
      for (const node of own) add(node.nodeValue);
      if (own.length > 1) add(own.map((node) => node.nodeValue).join(''));
      if (one.children.length > 0 && (one.textContent ?? '').length < 300) add(one.textContent);
    }
    add(document.title);
    return [...texts];
  });
