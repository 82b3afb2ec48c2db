import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { backupFaults } from '../../src/store/backup/faults.ts';
import { storeFaults } from '../../src/store/faults.ts';
import { type CatalogueName, fetchCatalogue } from '../../src/words/catalogues.ts';
import { languages } from '../../src/words/settings.ts';

/** The catalogues that say faults, and what stands before the code in their keys. */
const sayers: readonly { readonly name: CatalogueName; readonly before: string }[] = [
  { name: 'recipeFaults', before: '' },
  { name: 'storeFaults', before: '' },
  { name: 'patternFaults', before: '' },
  { name: 'draft', before: '' },
  { name: 'count', before: 'fault ' },
];

const folders = ['src/knit', 'src/store', 'src/progress', 'src/app'];
const files = folders.flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => `${folder}/${path}`),
);

/** `fault('code', …)` and the named short forms of it, where a code stands as a string. */
const made = /(?<![.\w])(?:fault|refuseWith|Refusal|storeFault|backupFault|no|tell\(\w+)[(,]\s*'([^']+)'/g;

const codesInSource = (): Map<string, string> =>
  new Map(
    files.flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(made)].map((match) => [match[1] ?? '', file] as const),
    ),
  );

const allCodes = (): Map<string, string> =>
  new Map([
    ...codesInSource(),
    ...Object.keys(storeFaults).map((code) => [code, 'src/store/faults.ts'] as const),
    ...Object.keys(backupFaults).map((code) => [code, 'src/store/backup/faults.ts'] as const),
  ]);

const known: Record<string, ReadonlySet<string>> = {};
beforeAll(async () => {
  for (const language of languages) {
    const keys = await Promise.all(
      sayers.map(async ({ name, before }) =>
        Object.keys((await fetchCatalogue(name, language)).words)
          .filter((key) => key.startsWith(before))
          .map((key) => key.slice(before.length)),
      ),
    );
    known[language] = new Set(keys.flat());
  }
});

describe('what can go wrong', () => {
  it('is found in the source by its code: of the row language, recipes, drafts, patterns, store and backup', () => {
    const codes = allCodes();
    for (const code of [
      'endless repeat',
      'fabric multiple',
      'neck too wide',
      'nothing rests',
      'storage-full',
    ])
      expect(codes.has(code), code).toBe(true);
    expect(codes.size).toBeGreaterThan(110);
  });

  it.each(languages)('has a sentence for each code in the language %s', (language) => {
    const mute = [...allCodes()].filter(([code]) => !known[language]?.has(code));
    expect(mute.map(([code, file]) => `${code} (${file})`)).toEqual([]);
  });
});
