import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { saysInTurn } from '../../src/words/in-turn.ts';
import { languages } from '../../src/words/languages.ts';

it('counts that follow each other stand apart from the text around them, from left to right', () => {
  // Unicode Bidirectional Algorithm (UAX #9), 2.4: left-to-right isolate and its end
  expect(saysInTurn([118, 96, 0])).toBe('\u2066118 → 96 → 0\u2069');
  expect(saysInTurn([1180, '10 + 10'])).toBe('\u20661,180 → 10 + 10\u2069');
});

it('no message puts an arrow between figures itself: it would be turned where a page runs from right to left', () => {
  for (const language of languages)
    for (const file of readdirSync(join('src/words', language)).filter((name) => name.endsWith('.ts')))
      expect(readFileSync(join('src/words', language, file), 'utf8')).not.toMatch(/\} ?[→←] ?\{/);
});
