import { describe, expect, it } from 'vitest';
import { fabricsSeen, type Looked } from '../../../../../src/knit/pattern/follow/build/seen-fabric.ts';
import { shortenWorks } from '../../../../../src/knit/row/shorten.ts';
import type { Side } from '../../../../../src/knit/row/step.ts';
import type { StitchName } from '../../../../../src/knit/stitch.ts';

const WORKS: Readonly<Record<string, StitchName>> = { k: 'k', p: 'p', y: 'yo', t: 'k2tog' };

/** A row as it is worked: 'k' and 'p' from its beginning, 'y' a yarn-over, 't' two together; '?' in her own words. */
function row(text: string, side: Side): Looked {
  const works = [...text.replace('?', 'k')].map((letter) => WORKS[letter] ?? 'k');
  const before = works.reduce((sum, work) => sum + (work === 'yo' ? 0 : work === 'k2tog' ? 2 : 1), 0);
  return {
    side,
    steps: shortenWorks(works),
    before,
    ...(text.endsWith('?') ? { own: 'as the chart says' } : {}),
  };
}

/** Rows from the right side on, one after the other, and what each is seen to be. */
const seen = (rows: readonly string[], first: Side = 'RS'): string =>
  fabricsSeen(rows.map((text, i) => row(text, (i % 2 === 0) === (first === 'RS') ? 'RS' : 'WS')))
    .map((name) => name ?? '–')
    .join(', ');

const k = 'k'.repeat(12);
const p = 'p'.repeat(12);
const times = (n: number, ...rows: string[]): string[] => Array.from({ length: n }, () => rows).flat();

/** What a knitter would call them: common practice, no published source. */
describe('rows that nobody names are seen to be', () => {
  it.each<[string, readonly string[], string]>([
    ['stocking stitch', [k, p, k, p], 'stocking, stocking, stocking, stocking'],
    ['its other side', [p, k, p, k], times(4, 'reverse stocking').join(', ')],
    ['ridges', times(4, k), times(4, 'garter').join(', ')],
    [
      'ridges of purl rows',
      times(4, p),
      times(4, 'reverse stocking')
        .join(', ')
        .replace(/reverse stocking/g, 'garter'),
    ],
    ['no ridges, being one', [k, k, k, p], 'stocking, stocking, stocking, stocking'],
    ['a rib of ones', times(4, 'kp'.repeat(6)), times(4, 'rib 1x1').join(', ')],
    [
      'a rib of ones on an odd count',
      ['kp'.repeat(6) + 'k', 'pk'.repeat(6) + 'p'],
      'rib 1x1 matched, rib 1x1 matched',
    ],
    ['a rib of twos', times(4, 'kkpp'.repeat(4)), times(4, 'rib 2x2').join(', ')],
    [
      'moss stitch',
      ['kp'.repeat(6), 'pk'.repeat(6), 'kp'.repeat(6), 'pk'.repeat(6)],
      times(4, 'moss').join(', '),
    ],
    [
      'double moss',
      ['kkpp'.repeat(4), 'kkpp'.repeat(4), 'ppkk'.repeat(4), 'ppkk'.repeat(4)],
      times(4, 'moss').join(', '),
    ],
    ['nothing over five stitches', ['kkkkk', 'ppppp'], '–, –'],
    ['stocking stitch over ten, but for edges of two', ['k'.repeat(10), 'kkppppppkk'], 'stocking, stocking'],
    ['stocking stitch between edges of three', ['pkp' + k + 'pkp', 'kpk' + p + 'kpk'], 'stocking, stocking'],
    ['nothing between edges of four', ['ppppkkkkkkkkkkpppp', 'kkkkppppppppppkkkk'], '–, –'],
    ['nothing where stitches are mixed', ['kkkpkkkkpkkk', 'ppkpppppkppp'], '–, –'],
    ['stocking stitch with holes in it', ['kkkkkykkkkk', p], 'stocking, stocking'],
    [
      'stocking stitch with a row in her own words',
      [k, p, `${k}?`, p],
      'stocking, stocking, stocking, stocking',
    ],
    ['from the first row that tells one', ['kkkpkkkkpkkk', p, k, p], '–, stocking, stocking, stocking'],
    [
      'one behind the other',
      [...times(4, 'kp'.repeat(6)), k, p, k, p],
      `${times(4, 'rib 1x1').join(', ')}, ${times(4, 'stocking').join(', ')}`,
    ],
    [
      'ridges between stocking stitch',
      [k, p, k, k, k, k, k, p],
      'stocking, stocking, garter, garter, garter, garter, stocking, stocking',
    ],
    [
      'ridges behind a rib, the last of which is a row of what comes next',
      [...times(3, 'kp'.repeat(6)), p, k, p, k, k, k, k, k, p],
      'rib 1x1, rib 1x1, rib 1x1, stocking, stocking, stocking, garter, garter, garter, garter, stocking, stocking',
    ],
    [
      'ridges of purl rows from the right side on',
      [k, ...times(6, p)],
      'stocking, stocking, garter, garter, garter, garter, garter',
    ],
    [
      'its other side over eleven, but for edges of two',
      ['kkpppppppkk', 'k'.repeat(11)],
      times(2, 'reverse stocking').join(', '),
    ],
    [
      'ridges and then its other side',
      [k, k, k, k, p, k, p, k],
      'garter, garter, garter, garter, reverse stocking, reverse stocking, reverse stocking, reverse stocking',
    ],
  ])('%s', (_, rows, names) => {
    expect(seen(rows)).toBe(names);
  });

  it('what they are from the wrong side on as well', () => {
    expect(seen([p, k, p, k], 'WS')).toBe('stocking, stocking, stocking, stocking');
    expect(seen([p, k, p, ...times(4, p), p], 'WS')).toBe(
      'stocking, stocking, stocking, garter, garter, garter, garter, garter',
    );
    expect(seen(times(4, 'kkpp'.repeat(4)), 'WS')).toBe(times(4, 'rib 2x2').join(', '));
  });

  it('a rib all the same where one row of many is off, and moss stitch where every second one is', () => {
    const off = [...times(5, 'kp'.repeat(6)), 'pk'.repeat(6)];
    expect(seen(off)).toBe(times(6, 'rib 1x1').join(', '));
    expect(seen(['kp'.repeat(6), 'kp'.repeat(6), 'pk'.repeat(6), 'pk'.repeat(6)])).toBe(
      times(4, 'moss').join(', '),
    );
  });

  it('a rib where two rows of one width say so, whatever the shaped ones say', () => {
    expect(seen(['kp'.repeat(6), 'kp'.repeat(6), `t${'kp'.repeat(5)}`])).toBe(times(3, 'rib 1x1').join(', '));
    expect(seen(['kkpp'.repeat(3), 'tppkkppkkpp'])).toBe(times(2, 'rib 2x2').join(', '));
  });

  it('a rib whose edges are shaped, though its columns lie elsewhere then', () => {
    // at the right edge two are worked together: 11 are left, and the columns begin one stitch later
    expect(seen(['kp'.repeat(6), 'kp'.repeat(6), `t${'kp'.repeat(5)}`, `${'kp'.repeat(5)}k`])).toBe(
      times(4, 'rib 1x1').join(', '),
    );
  });
});
