import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { loadWords, speak } from '../../src/words/say.ts';
import { plainSpeech } from '../../src/words/settings.ts';
import { saysAgo, saysDate, saysDuration } from '../../src/words/time.ts';

beforeAll(() => loadWords('ui'));
afterEach(() => speak(plainSpeech));

const now = new Date(2026, 10, 25, 21, 0).getTime();
const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;

describe('how long ago', () => {
  it('is said as people say it, from just now to years', () => {
    const ago = [
      20_000,
      5 * MINUTE,
      3 * 60 * MINUTE,
      23 * 60 * MINUTE,
      3 * DAY,
      21 * DAY,
      80 * DAY,
      800 * DAY,
    ];
    expect(ago.map((ms) => saysAgo(now - ms, now))).toEqual([
      'just now',
      '5 minutes ago',
      '3 hours ago',
      'yesterday',
      '3 days ago',
      '3 weeks ago',
      '2 months ago',
      '2 years ago',
    ]);
  });

  it('is said in German', async () => {
    await speak({ language: 'de' });
    expect([20_000, 26 * 60 * MINUTE, 21 * DAY].map((ms) => saysAgo(now - ms, now))).toEqual([
      'gerade eben',
      'gestern',
      'vor 3 Wochen',
    ]);
  });

  it('counts midnights, not spans of 24 hours: last evening is yesterday in the morning', () => {
    const morning = new Date(2026, 10, 25, 7, 0).getTime();
    expect(saysAgo(new Date(2026, 10, 24, 23, 30).getTime(), morning)).toBe('yesterday');
    expect(saysAgo(new Date(2026, 10, 25, 0, 30).getTime(), morning)).toBe('6 hours ago');
  });

  it('never lies in the future, where a clock was put back', () => {
    expect(saysAgo(now + DAY, now)).toBe('just now');
  });
});

describe('dates and spans', () => {
  it('are written as the language writes them', async () => {
    expect(saysDate(now)).toBe('November 25, 2026');
    expect([20_000, 45 * MINUTE, 80 * MINUTE, 120 * MINUTE].map(saysDuration)).toEqual([
      '1 min',
      '45 min',
      '1 hr 20 min',
      '2 hr',
    ]);
    await speak({ terms: 'UK' });
    expect(saysDate(now)).toBe('25 November 2026');
    await speak({ language: 'de' });
    expect(saysDate(now)).toBe('25. November 2026');
    expect(saysDuration(80 * MINUTE)).toBe('1 Std. 20 Min.');
  });
});
