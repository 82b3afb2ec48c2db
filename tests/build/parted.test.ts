import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { withPlaces } from '../../src/build/parted.ts';
import { words as draft } from '../../src/words/de/draft.ts';

const shown = (text: string) => text.replaceAll('\u00ad', '|');

describe('long words in the build', () => {
  it('may be parted where German parts them (Amtliches Regelwerk 2024, § 107 to 113), each in its own case', () => {
    for (const [word, parts] of [
      ['Maschenproben', 'Maschen|proben'],
      ['ZUSAMMENNÄHEN', 'ZUSAMMEN|NÄHEN'],
      ['am wahrscheinlichsten', 'am wahr|schein|lichsten'],
      ['abzufotografieren', 'abzu|foto|grafieren'],
      ['Schlupfausschnitt', 'Schlupf|ausschnitt'],
      ['Zurücknehmen', 'Zurück|nehmen'],
    ] as const)
      expect(shown(withPlaces(word, 'de'))).toBe(parts);
  });

  it('are left whole in other languages, and short words in all', () => {
    for (const language of ['en', 'fr'] as const)
      expect(withPlaces('Maschenprobe', language)).toBe('Maschenprobe');
    expect(withPlaces('Die Maschen zählen', 'de')).toBe('Die Maschen zählen');
  });

  it('change nothing but by hidden letters, and no name of a piece, a section or a garment', () => {
    for (const file of readdirSync('src/words/de').filter((name) => name.endsWith('.ts'))) {
      const code = readFileSync(`src/words/de/${file}`, 'utf8');
      expect(withPlaces(code, 'de').replaceAll('\u00ad', '')).toBe(code);
    }
    // the last of the draft's words are what its pieces, sections and edges are called
    const keys = Object.keys(draft);
    const names = Object.entries(draft).slice(keys.indexOf('Shoulder band'));
    expect(names.length).toBeGreaterThan(30);
    for (const [, name] of names) if (typeof name === 'string') expect(withPlaces(name, 'de')).toBe(name);
  });
});
