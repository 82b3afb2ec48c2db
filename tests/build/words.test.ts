import { readdirSync, readFileSync } from 'node:fs';
import { transformWithOxc } from 'vite';
import { describe, expect, it } from 'vitest';
import {
  codeOfTheApp,
  named,
  numberedCatalogue,
  numberedCode,
  numbersOf,
  putTogether,
} from '../../src/build/words.ts';
import { faultCatalogues } from '../../src/words/fault-catalogues.ts';
import type { Words } from '../../src/words/message.ts';

const code = codeOfTheApp();
const numbers = numbersOf(code);
const keys = [...numbers].flatMap(([catalogue, { order }]) => order.map((name) => `${catalogue}.${name}`));

/** What of a script stands in quotes and may be the key of a message; a quote that ends one may begin the next. */
const quoted = (script: string): readonly string[] =>
  [...script.matchAll(/'(\w+\.[^'\n]*)(?=')/g)].map(([, text = '']) => text);

/** A catalogue as the build has it. */
async function built(path: string, catalogue: string): Promise<Readonly<Record<string, unknown>>> {
  const numbered = numberedCatalogue(readFileSync(path, 'utf8'), path, numbers) ?? '';
  const names = JSON.stringify(numbers.get(catalogue)?.kept);
  const whole = numbered.replace(
    /^import named from [^;]*;/,
    `const named = (${named.toString()})(${names});`,
  );
  const { code: script } = await transformWithOxc(whole, path);
  // in Node a module of one text has no file: what it would import is not asked of it here
  const alone = script.replace(/^import .*$/gm, '');
  const { words } = (await import(`data:text/javascript,${encodeURIComponent(alone)}`)) as { words: Words };
  return words;
}

describe('the messages in the build', () => {
  it('are each found by number in every language, and those that the app names while it runs by name', async () => {
    expect(keys.length).toBeGreaterThan(1000);
    for (const language of readdirSync('src/words', { withFileTypes: true }).filter((d) => d.isDirectory()))
      for (const [catalogue, { order, kept }] of numbers) {
        const file = catalogue.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
        const path = `src/words/${language.name}/${file}.ts`;
        const { words } = (await import(`../../src/words/${language.name}/${file}.ts`)) as { words: Words };
        const found = await built(path, catalogue);
        for (const [number, name] of order.entries()) {
          expect({ [`${path} ${name}`]: found[number] }).toEqual({ [`${path} ${name}`]: words[name] });
          if (kept.includes(name)) expect(found[name]).toBe(found[number]);
        }
      }
  });

  it('have no name left where one is said, and the number of that message', () => {
    const left = new Set(
      [...code].flatMap(([path, file]) => quoted(numberedCode(file, path, numbers) ?? file)),
    );
    expect(keys.filter((key) => left.has(key))).toEqual([]);
    const said = (keyOf: (catalogue: string, number: number, name: string) => string) =>
      [...numbers]
        .flatMap(([catalogue, { order }]) => order.map((name, at) => `say('${keyOf(catalogue, at, name)}');`))
        .join('\n');
    const byName = said((catalogue, _, name) => `${catalogue}.${name}`);
    expect(numberedCode(byName, '.ts', numbers)).toBe(said((catalogue, number) => `${catalogue}.${number}`));
    expect(numberedCode("const key = 'backed.up'; say(key)", '.ts', numbers)).toBeUndefined();
  });

  it('keep the names that are put together, asked for at run time, or are codes of faults', () => {
    const fits = (text: string, key: string) => putTogether(text, '.ts').some((pattern) => pattern.test(key));
    expect(fits(`say(\`count.\${tool}Hint\`)`, 'count.findHint')).toBe(true);
    expect(fits(`say(\`count.\${tool}Hint\`)`, 'count.find')).toBe(false);
    expect(fits(`say(\`\${words}.startAgain\`)`, 'draft.startAgain')).toBe(true);
    expect(fits(`say(\`\${words}.startAgain\`)`, 'draft.keepGoing')).toBe(false);
    expect(fits("sayIfKnown('draft', name)", 'draft.hem')).toBe(true);
    expect(fits("say('draft.hem')", 'draft.hem')).toBe(false);
    const isKept = (catalogue: string, name: string) => numbers.get(catalogue)?.kept.includes(name);
    expect(isKept('craft', 'fabric reverse stocking')).toBe(true);
    expect(isKept('editor', 'role left front')).toBe(true);
    expect(isKept('editor', 'titleNew')).toBe(false);
    // the draft is asked for any name: of a choice, a piece, an edge; never for that of a sentence of its own
    expect(isKept('draft', 'neckband')).toBe(true);
    expect(isKept('draft', 'seam stitch')).toBe(true);
    expect(isKept('draft', 'bodyChest')).toBe(false);
    for (const faults of faultCatalogues)
      expect(numbers.get(faults)?.kept).toEqual(numbers.get(faults)?.order);
  });

  it('are each said somewhere: none takes room for nothing', () => {
    const said = new Set([...code.values()].flatMap(quoted));
    const mute = [...numbers].flatMap(([catalogue, { order, kept }]) =>
      order.filter((name) => !kept.includes(name) && !said.has(`${catalogue}.${name}`)),
    );
    expect(mute).toEqual([]);
  });

  it('stop the build where a language lacks one', () => {
    expect(() => numberedCatalogue('export const words = { none: "" };', 'de/lap.ts', numbers)).toThrow(
      "de/lap.ts has no message '",
    );
  });
});
