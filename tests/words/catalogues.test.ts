import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type CatalogueName, fetchCatalogue, firstCatalogues } from '../../src/words/catalogues.ts';
import type { Message, Words } from '../../src/words/message.ts';
import { otherCatalogues } from '../../src/words/other-catalogues.ts';
import { termsOf } from '../../src/words/terms.ts';

const formsOf = (message: Message): string[] =>
  typeof message === 'string' ? [message] : [message.one, message.other];

const figuresOf = (message: Message): string[] =>
  [...new Set(formsOf(message).flatMap((form) => [...form.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '')))]
    .filter((name) => name !== 'count')
    .sort();

const catalogueNames = Object.keys({ ...firstCatalogues, ...otherCatalogues }) as CatalogueName[];

const loaded = await Promise.all(
  catalogueNames.map(async (name) => ({
    name,
    english: (await fetchCatalogue(name, 'en')).words as Words,
    german: (await fetchCatalogue(name, 'de')).words as Words,
  })),
);

const everyMessage = loaded.flatMap(({ name, english, german }) =>
  Object.keys(english).map((key) => ({ key: `${name}.${key}`, english: english[key], german: german[key] })),
);

describe('the catalogues', () => {
  it('stand in one file each, in both languages, and none is forgotten in the list', () => {
    const files = (language: string) =>
      readdirSync(`src/words/${language}`)
        .map((file) => file.replace('.ts', '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase()))
        .sort();
    expect(files('en')).toEqual(files('de'));
    expect(files('en').filter((name) => !notSaid.includes(name))).toEqual([...catalogueNames].sort());
  });

  it('say the same things: German has every message of the English ones and no other', () => {
    expect(everyMessage.length).toBeGreaterThan(150);
    for (const { name, english, german } of loaded) {
      expect({ name, keys: Object.keys(german).sort() }).toEqual({ name, keys: Object.keys(english).sort() });
    }
  });

  it('ask for the same figures in both languages', () => {
    const differing = everyMessage.filter(
      ({ english, german }) =>
        english === undefined ||
        german === undefined ||
        String(figuresOf(english)) !== String(figuresOf(german)),
    );
    expect(differing.map(({ key }) => key)).toEqual([]);
  });

  it('say what is bound off in brackets, since leaflets in UK terms cast it off', () => {
    const bare = everyMessage.filter(({ english = '' }) =>
      formsOf(english).some((form) =>
        /\b(bind|bound|binding)[ -]off\b/i.test(form.replaceAll(/\[[^\]]*\]/g, '')),
      ),
    );
    // where the terms themselves are chosen both stand side by side
    expect(bare.map(({ key }) => key)).toEqual(['settings.termsUShint']);
  });

  it('leave no message empty, and none in English where German differs by nature', () => {
    const empty = everyMessage.filter(({ english, german }) =>
      [english, german].some(
        (message) => message === undefined || formsOf(message).some((form) => form.trim() === ''),
      ),
    );
    expect(empty.map(({ key }) => key)).toEqual([]);
    const sentences = everyMessage.filter(
      ({ english }) => english !== undefined && /\w+ \w+ \w+/.test(String(formsOf(english))),
    );
    const untranslated = sentences.filter(
      ({ english, german }) => JSON.stringify(english) === JSON.stringify(german),
    );
    expect(untranslated.map(({ key }) => key)).toEqual([]);
  });

  it('put in brackets only trade words that US and UK say differently, and only in English', () => {
    const bracketed = (message: Message | undefined) =>
      message === undefined
        ? []
        : formsOf(message).flatMap((form) => [...form.matchAll(/\[([^\]]+)\]/g)].map((m) => m[1] ?? ''));
    const british = termsOf('en', 'UK');
    const unknown = everyMessage.flatMap(({ key, english }) =>
      bracketed(english)
        .filter((term) => british[term] === undefined)
        .map((term) => `${key}: ${term}`),
    );
    expect(unknown).toEqual([]);
    expect(everyMessage.flatMap(({ german }) => bracketed(german))).toEqual([]);
  });
});

/** Files that hold explanations by stitch, not messages. */
const notSaid: readonly string[] = ['stitches'];
