import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { countAt } from '../../src/knit/piece/count/count-at.ts';
import { explainCount } from '../../src/knit/piece/explain-count.ts';
import { saysAdvice, saysCause, saysSeen, saysShare, saysSign } from '../../src/words/count.ts';
import { loadWords, speak } from '../../src/words/say.ts';
import { plainSpeech } from '../../src/words/settings.ts';
import { mitten } from '../knit/piece/count/mitten.ts';

beforeAll(async () => {
  await loadWords('ui', 'craft', 'count');
  await speak(plainSpeech);
});
afterEach(() => speak(plainSpeech));

const found = (rows: number, off: number) =>
  explainCount(mitten, rows, (countAt(mitten, rows) ?? 0) + off, { checks: [] });

const allSaid = () =>
  [-3, -2, -1, 1, 2, 3, 40]
    .flatMap((off) => [1, 4, 9, 13].flatMap((rows) => found(rows, off)))
    .flatMap((one) => [saysCause(one), saysSign(one), ...one.toDo.map(saysAdvice)]);

describe('what is said of a count that does not agree', () => {
  it.each(['en', 'de'] as const)(
    'names no row 0, which is no place, and leaves no figure out (%s)',
    async (language) => {
      await speak({ language });
      const said = allSaid();
      expect(said.filter((one) => /(row|Reihe) 0\b/.test(one))).toEqual([]);
      expect(said.filter((one) => one === '' || /[{}]/.test(one))).toEqual([]);
    },
  );

  it('a cast-on that may be miscounted: its edge, and what would be wrong with it', async () => {
    const castOn = (off: number) =>
      found(4, off)
        .filter(({ cause }) => cause === 'cast-on miscounted')
        .map(saysSign);
    expect([...castOn(-2), ...castOn(1)]).toEqual([
      'The cast-on was never counted. Count along its edge; 2 stitches would be missing there.',
      'The cast-on was never counted. Count along its edge; there would be 1 stitch too many.',
    ]);
    expect(saysSeen({ castOn: -2 }, mitten, 0)).toBe('18');
  });

  it('a share of what is likely is never all of it', async () => {
    expect([saysShare(0.5), saysShare(0.994), saysShare(1)]).toEqual([
      'about 50% likely',
      'about 99% likely',
      'about 99% likely',
    ]);
    await speak({ language: 'de' });
    expect(saysShare(0.5)).toMatch(/^zu etwa 50\s%/);
  });
});
