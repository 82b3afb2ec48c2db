import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withCounted } from '../../src/build/counted.ts';
import { languages } from '../../src/words/languages.ts';

const shown = (text: string) => text.replaceAll('\u00a0', '_');

describe('a number and what it counts, in the build', () => {
  it.each([
    ['en', '{count} stitches to row {row}, 4 rows on', '{count}_stitches to row_{row}, 4_rows on'],
    ['en', 'Row {row} of {rows}: {rows} rows', 'Row {row} of {rows}: {rows}_rows'],
    [
      'de',
      'ab Reihe {row}: {count} Maschen, {balls} Knäuel',
      'ab Reihe_{row}: {count}_Maschen, {balls}_Knäuel',
    ],
    ['fr', 'Rang {row} sur {rows}, puis {count} mailles', 'Rang {row} sur {rows}, puis {count}_mailles'],
  ] as const)('%s: stand on one line', (language, text, held) => {
    expect(shown(withCounted(text, language))).toBe(held);
  });

  it.each([
    ['en', '{name} goes on, {piece} and {part}, {count} stitchings, arrow {row}, k2 times'],
    ['de', '{piece} und {part}, {count} Maschenproben, Vorreihe {row}'],
    ['fr', '{piece} et {part}, {count} rangements'],
  ] as const)('%s: but no name, no longer word and no stitch', (language, text) => {
    expect(withCounted(text, language)).toBe(text);
  });

  it('changes nothing but spaces, in some two hundred places of each language', () => {
    for (const language of languages) {
      const folder = `src/words/${language}`;
      const code = readdirSync(folder)
        .filter((name) => name.endsWith('.ts'))
        .map((name) => readFileSync(`${folder}/${name}`, 'utf8'))
        .join('\n');
      const held = withCounted(code, language);
      expect(held.replaceAll('\u00a0', ' ')).toBe(code.replaceAll('\u00a0', ' '));
      expect(held.split('\u00a0').length - code.split('\u00a0').length).toBeGreaterThan(200);
    }
  });
});
