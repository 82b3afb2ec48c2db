import { describe, expect, it } from 'vitest';
import { readPattern } from '../../../../src/knit/pattern/read-pattern.ts';

const lineOf = (text: string) => readPattern(`Cast on 9 sts.\n${text}\nBind off.`).lines[1];

/** How lists of short words are usually set: common practice, no published source. */
describe('a line that only says what a word means', () => {
  it.each([
    'K - knit',
    'k = knit',
    'purl = p',
    'sl1 – slip 1 st',
    'inc = increase in next st',
    'inc 1 = increase in next st',
    'dec = decrease 1 st',
    'dec 1 st - decrease 1 st',
    'pat = pattern',
    'rem – remaining',
    'beg - beginning',
    'tog = together',
  ])('orders nothing: %s', (text) => {
    expect(lineOf(text)).toMatchObject({ kind: 'talk', rows: [], faults: [] });
  });

  it.each(
    [
      ['k 9', 'k - purl', 'k 3 - knit to end', 'p: purl', 's1, k8 - slip'],
      // of the same word in full, but of a row of its own: no list explains it so
      ['dec 1 st each - decrease 1 st', 'K - K 9', 'cont = continue in st st for 4 rows', '- knit'],
    ].flat(),
  )('is not seen in an order: %s', (text) => {
    const { kind, rows = [], faults = [] } = lineOf(text) ?? {};
    expect(kind === 'talk' && rows.length === 0 && faults.length === 0, text).toBe(false);
  });
});
