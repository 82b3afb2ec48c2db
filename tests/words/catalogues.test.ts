import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { alwaysThere, type CatalogueName, fetchCatalogue } from '../../src/words/catalogues.ts';
import { type Language, languages, languageTable } from '../../src/words/languages.ts';
import type { Message, Words } from '../../src/words/message.ts';
import { termsOf } from '../../src/words/terms.ts';

const formsOf = (message: Message): string[] =>
  typeof message === 'string' ? [message] : Object.values(message);

const figuresOf = (message: Message): string[] =>
  [...new Set(formsOf(message).flatMap((form) => [...form.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '')))]
    .filter((name) => name !== 'count')
    .sort();

/** Files that hold explanations by stitch, and lists of files; not messages. */
const notSaid: readonly string[] = ['stitches', 'first', 'rest'];

const filesOf = (language: Language) =>
  readdirSync(`src/words/${language}`)
    // what a written pattern says lies in a folder of its own; English has it beside the reader
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.replace('.ts', '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase()))
    .sort();

const catalogueNames = filesOf('en').filter((name) => !notSaid.includes(name)) as CatalogueName[];
const others = languages.filter((language) => language !== 'en');

const wordsOf = async (name: CatalogueName, language: Language): Promise<Words> =>
  language === 'en' && name in alwaysThere
    ? alwaysThere[name as keyof typeof alwaysThere]
    : (await fetchCatalogue(name, language)).words;

/** Every message in English and in each other language. */
const everyMessage = (
  await Promise.all(
    catalogueNames.flatMap((name) =>
      others.map(async (language) => {
        const [english, theirs] = await Promise.all([wordsOf(name, 'en'), wordsOf(name, language)]);
        return Object.keys(english).map((key) => ({
          key: `${language}: ${name}.${key}`,
          english: english[key] as Message,
          said: theirs[key] as Message,
        }));
      }),
    ),
  )
).flat();

describe('the catalogues', () => {
  it.each(languages)('stand in one file each in %s, and none is forgotten in the two lists', (language) => {
    expect(filesOf(language)).toEqual(filesOf('en'));
    const listed = ['first', 'rest'].flatMap((list) =>
      [
        ...readFileSync(`src/words/${language}/${list}.ts`, 'utf8').matchAll(
          /export \* as (\w+) from '\.\/[\w-]+\.ts'/g,
        ),
      ].map(([, name]) => name),
    );
    const inScript = language === 'en' ? Object.keys(alwaysThere) : [];
    expect([...listed, ...inScript, 'first', 'rest'].sort()).toEqual(filesOf(language));
  });

  it('say the same things: every language has every message of the English ones and no other', async () => {
    expect(everyMessage.length).toBeGreaterThan(2 * 1000);
    for (const language of others)
      for (const name of catalogueNames)
        expect({ language, name, keys: Object.keys(await wordsOf(name, language)).sort() }).toEqual({
          language,
          name,
          keys: Object.keys(await wordsOf(name, 'en')).sort(),
        });
  });

  it('ask for the same figures in every language', () => {
    const differing = everyMessage.filter(
      ({ english, said }) => String(figuresOf(english)) !== String(figuresOf(said)),
    );
    expect(differing.map(({ key }) => key)).toEqual([]);
  });

  it('say what is bound off in brackets, since leaflets in UK terms cast it off', () => {
    const bare = everyMessage.filter(({ english }) =>
      formsOf(english).some((form) =>
        /\b(bind|bound|binding)[ -]off\b/i.test(form.replaceAll(/\[[^\]]*\]/g, '')),
      ),
    );
    // where the terms themselves are chosen both stand side by side
    expect([...new Set(bare.map(({ key }) => key.replace(/^\w+: /, '')))]).toEqual(['settings.termsUShint']);
  });

  it('leave no message empty, and none in English where another language differs by nature', () => {
    const empty = everyMessage.filter(({ english, said }) =>
      [english, said].some((message) => formsOf(message).some((form) => form.trim() === '')),
    );
    expect(empty.map(({ key }) => key)).toEqual([]);
    const untranslated = everyMessage.filter(
      ({ english, said }) =>
        /\w+ \w+ \w+/.test(String(formsOf(english))) && JSON.stringify(english) === JSON.stringify(said),
    );
    expect(untranslated.map(({ key }) => key)).toEqual([]);
  });

  it('have a form for each plural that the language has for whole numbers (CLDR, by Intl)', () => {
    for (const language of languages) {
      const rules = new Intl.PluralRules(languageTable[language].locale);
      const asked = new Set(Array.from({ length: 1000 }, (_, n) => rules.select(n)));
      const lacking = everyMessage.filter(
        ({ key, said }) =>
          key.startsWith(`${language}:`) &&
          typeof said !== 'string' &&
          [...asked].some((form) => said[form] === undefined),
      );
      expect(lacking.map(({ key }) => key)).toEqual([]);
    }
  });

  it('put in brackets only trade words that US and UK say differently, and only in English', () => {
    const bracketed = (message: Message) =>
      formsOf(message).flatMap((form) => [...form.matchAll(/\[([^\]]+)\]/g)].map((m) => m[1] ?? ''));
    const british = termsOf('en', 'UK');
    const unknown = everyMessage.flatMap(({ key, english }) =>
      bracketed(english)
        .filter((term) => british[term] === undefined)
        .map((term) => `${key}: ${term}`),
    );
    expect(unknown).toEqual([]);
    expect(everyMessage.flatMap(({ said }) => bracketed(said))).toEqual([]);
  });

  it('set a space that does not break before the French signs of two parts and inside its quotation marks', () => {
    // Lexique des règles typographiques en usage à l'Imprimerie nationale: an unbreakable space there (from memory)
    const broken = everyMessage.filter(
      ({ key, said }) =>
        key.startsWith('fr:') &&
        formsOf(said).some((form) => /[^\u00a0\u202f][:;?!»]|«[^\u00a0\u202f]/.test(form)),
    );
    expect(broken.map(({ key }) => key)).toEqual([]);
  });

  it('never part a number from its unit at the end of a line', () => {
    const parted = everyMessage.filter(({ english, said }) =>
      [english, said].some((message) =>
        /(\d|\{\w+\}) (cm|mm|Zoll|po|yd|Yards|%)(?!\p{L})/u.test(JSON.stringify(message)),
      ),
    );
    expect(parted.map(({ key }) => key)).toEqual([]);
  });

  it('have one German word for what is kept as it is typed', () => {
    const strays = everyMessage.filter(
      ({ key, said }) =>
        key.startsWith('de:') && /aufgehoben|bewahr|verwahr|gesichert/i.test(JSON.stringify(said)),
    );
    // that of the backup, which is made of all that is kept
    expect(strays.map(({ key }) => key).filter((key) => !key.startsWith('de: backup.'))).toEqual([]);
  });
});

describe('the page itself', () => {
  it('says in every language that it could not start', () => {
    const page = readFileSync('index.html', 'utf8');
    const notStarted = /<div id="not-started"[\s\S]*?<\/div>/.exec(page)?.[0] ?? '';
    for (const language of others) expect(notStarted).toContain(`<p lang="${language}">`);
  });
});
