import { describe, expect, it } from 'vitest';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { stretchesOf, stripeLines } from '../../../src/knit/written/stripe-lines.ts';
import { writtenWords as german } from '../../../src/words/de/written/written.ts';
import { writtenWords as french } from '../../../src/words/fr/written/written.ts';

/** 'aabb' is two rows of a and two of b; a dot is a row without a colour of its own. */
const rows = (letters: string) => [...letters].map((one) => (one === '.' ? undefined : one));
const told = (letters: string) =>
  stretchesOf(rows(letters)).map(
    ({ first, last, turn }) => `${first}-${last}: ${turn.map((one) => `${one.rows}${one.colour}`).join(' ')}`,
  );

describe('the rows of a part in their colours', () => {
  it.each([
    ['one colour', 'aaaa', ['1-4: 4a']],
    ['in turn', 'aabbaabbaabb', ['1-12: 2a 2b']],
    ['in turn, the last one cut short', 'aabbbaabbbaab', ['1-13: 2a 3b']],
    ['twice, and cut short', 'aabbaabba', ['1-9: 2a 2b']],
    ['in the shortest of several turns', 'abababab', ['1-8: 1a 1b']],
    ['three colours in turn', 'abbcabbcabbc', ['1-12: 1a 2b 1c']],
    ['other ones from a row on', 'aaaaaabbccbbccbb', ['1-6: 6a', '7-16: 2b 2c']],
    ['begun within a stripe', 'abbaabbaabb', ['1-1: 1a', '2-11: 2b 2a']],
    ['not twice the same', 'aabbb', ['1-2: 2a', '3-5: 3b']],
    ['some rows without', '..aabbaabb', ['3-10: 2a 2b']],
    ['none', '....', []],
  ])('%s', (_, letters, stretches) => {
    expect(told(letters)).toEqual(stretches);
  });

  it('come back row by row from what is told of them', () => {
    for (const letters of ['aabbbaabbbaab', 'aaaaaabbccbbccbb', 'abcabcabdabd', 'aabbccddaabbccddaab']) {
      const back = stretchesOf(rows(letters)).map(({ first, last, turn }) => {
        const once = turn.map((one) => one.colour.repeat(one.rows)).join('');
        return once.repeat(last).slice(0, last - first + 1);
      });
      expect(back.join('')).toBe(letters);
    }
  });
});

describe('the row that binds off', () => {
  const part = (letters: string, boundOffIn?: string) => [
    { piece: 'Back', parts: [{ name: 'Back', rows: rows(letters), ...(boundOffIn && { boundOffIn }) }] },
  ];
  it('is told in the words of either side of the Atlantic, where it has a colour of its own', () => {
    expect(stripeLines(part('ww', 's'), englishWritten('US'))).toEqual([
      'Stripes, Back: rows 1 to 2 in w; bind off in s.',
    ]);
    expect(stripeLines(part('ww', 's'), englishWritten('UK'))).toEqual([
      'Stripes, Back: rows 1 to 2 in w; cast off in s.',
    ]);
    expect(stripeLines(part('ww'), englishWritten('UK'))).toEqual(['Stripes, Back: rows 1 to 2 in w.']);
  });

  it('of a part without colours is not told, nor is the part', () => {
    expect(stripeLines(part('..'), englishWritten('US'))).toEqual([]);
  });
});

describe('a line of a part', () => {
  const makes = [
    { piece: 'Back', parts: [{ name: 'Back', rows: rows('wwwwssnnssnn') }] },
    { piece: 'Sleeve', make: 2, parts: [{ name: 'Top', rows: rows('s') }] },
  ];
  it('says it in the words of each language, in the numbers of the rows', () => {
    expect(stripeLines(makes, englishWritten('US'))).toEqual([
      'Stripes, Back: rows 1 to 4 in w; rows 5 to 12: 2 rows in s, 2 rows in n, in turn.',
      'Stripes, Sleeve, no. 2, Top: row 1 in s.',
    ]);
    expect(stripeLines(makes, german)).toEqual([
      'Streifen, Rückenteil: Reihen 1 bis 4 in w; Reihen 5 bis 12: 2 Reihen in s, 2 Reihen in n, im Wechsel.',
      'Streifen, Ärmel, Nr. 2, Top: Reihe 1 in s.',
    ]);
    expect(stripeLines(makes, french)[0]).toBe(
      'Rayures, Dos\u00a0: rangs 1 à 4 en w\u00a0; rangs 5 à 12\u00a0: 2 rangs en s, 2 rangs en n, en alternance.',
    );
  });
});
