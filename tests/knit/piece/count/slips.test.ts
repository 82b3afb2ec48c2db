import { describe, expect, it } from 'vitest';
import type { LaidRow } from '../../../../src/knit/piece/count/lie.ts';
import type { SlipCause, Stretch } from '../../../../src/knit/piece/count/slip.ts';
import { slipsIn } from '../../../../src/knit/piece/count/slips.ts';
import { mitten, partOf, section } from './mitten.ts';

/** What may have gone wrong in a mitten of 16 rows (mitten.ts), reckoned by hand from the rates of slips (rates.ts). */

const stretch = (from: number, to: number, landmark = from): Stretch => ({
  part: mitten,
  from,
  latest: to,
  to,
  landmark,
});

/** How a row lies: what it added at the right edge, across or in a group, and at the left edge; '.' where nothing. */
const told = ({ right, left, across, group }: LaidRow): string =>
  right === 0 && left === 0 && across === 0 && group === 0
    ? '.'
    : [right || '', across || group || '', left || ''].join('/');

const of = (cause: SlipCause, where: Stretch) => slipsIn(where).filter((slip) => slip.cause === cause);

/** 'rows edge: what it adds, one in so many, how it lies' */
const lines = (cause: SlipCause, where: Stretch) =>
  of(cause, where).map((slip) => {
    const lie = slip.lie();
    const at = [slip.rows.join('+'), slip.edge, `×${slip.times}`].filter((one) => one).join(' ');
    const trace = lie.trace === 'none' ? '' : ` ${lie.trace}`;
    const one = Math.round(1 / slip.weight);
    return `${at}: ${slip.by}, 1 in ${one}, ${lie.rows.map(told).join(' ')}${trace}`;
  });

describe('what may have happened in rows 6 to 13, in two of which both edges were decreased', () => {
  const where = stretch(5, 13);

  it('the place is ahead of the knitting, or behind it: one row in 250 of the eight, four times rarer each further', () => {
    // 8/250 is 1 in 31; rows 7 and 8 still have 24 stitches
    expect(lines('place ahead', where)).toEqual([
      '12 ×1: 2, 1 in 31, . . . -1//-1 . . .',
      '11 ×2: 2, 1 in 125, . . . -1//-1 . .',
      '10 ×3: 2, 1 in 500, . . . -1//-1 .',
      '9 ×4: 2, 1 in 2000, . . . -1//-1',
      '8 ×5: 4, 1 in 8000, . . .',
      '7 ×6: 4, 1 in 32000, . .',
    ]);
    expect(lines('place behind', where)).toEqual([
      '14 ×1: -1, 1 in 31, . . . -1//-1 . . . -1//-1 -1//',
      '15 ×2: -4, 1 in 125, . . . -1//-1 . . . -1//-1 -1// /-3/',
      '16 ×3: -7, 1 in 500, . . . -1//-1 . . . -1//-1 -1// /-3/ /-3/',
    ]);
  });

  it('not further back than the count that was right', () => {
    expect(of('place ahead', stretch(10, 13)).map(({ rows }) => rows[0])).toEqual([12, 11, 10]);
    expect(of('place ahead', stretch(0, 3)).map(({ by }) => by)).toEqual([0, 0, 0]);
  });

  it('a shaping row was tapped and not worked, or worked plain: one in 250, one in 50', () => {
    expect(lines('shaping missed', where)).toEqual([
      '9 ×1: 2, 1 in 250, . . . . . . -1//-1',
      '13 ×1: 2, 1 in 250, . . . -1//-1 . . .',
      '9 ×1: 2, 1 in 50, . . . . . . . -1//-1',
      '9+13 ×2: 4, 1 in 200, . . . . . . . .',
      '13 ×1: 2, 1 in 50, . . . -1//-1 . . . .',
    ]);
  });

  it('of different kinds not two at once', () => {
    const rows = of('shaping missed', stretch(12, 16)).map((slip) => slip.rows.join('+'));
    expect(rows).toEqual(['13', '14', '15', '16', '13', '14', '15', '15+16', '16']);
  });

  it('a shaping row was worked twice: in another row, as a pair or for want of a tap', () => {
    expect(lines('shaping doubled', where)).toEqual([
      '9 ×1: -2, 1 in 300, . . . -1//-1 . -1//-1 . -1//-1',
      '9 ×1: -2, 1 in 300, . . . -1//-1 . -1//-1 . . . -1//-1',
      '9 ×1: -2, 1 in 250, . . . -1//-1 -1//-1 . . . -1//-1',
      '13 ×1: -2, 1 in 300, . . . -1//-1 . . . -1//-1 . -1//-1',
      '13 ×1: -2, 1 in 250, . . . -1//-1 . . . -1//-1 -1//-1',
    ]);
    // the next but one is shaped itself here: the next one then
    const close = partOf(
      20,
      'hold',
      section({
        rows: 8,
        shaping: [{ kind: 'edge', edge: 'left', by: -1, rows: [3, 5], inset: 1, lean: 'mirrored' }],
      }),
    );
    const close3 = slipsIn({ part: close, from: 0, latest: 4, to: 8, landmark: 0 });
    const [another] = close3.filter(({ cause }) => cause === 'shaping doubled');
    expect(another?.lie().rows.map(told).join(' ')).toBe('. . //-1 //-1 //-1 . . .');
  });

  it('only one of the two edges was worked: one in 120, either as likely', () => {
    expect(lines('one edge only', where)).toEqual([
      '9 right ×1: 1, 1 in 240, . . . //-1 . . . -1//-1',
      '9 left ×1: 1, 1 in 240, . . . -1// . . . -1//-1',
      '13 right ×1: 1, 1 in 240, . . . -1//-1 . . . //-1',
      '13 left ×1: 1, 1 in 240, . . . -1//-1 . . . -1//',
    ]);
    expect(of('one edge only', stretch(13, 16))).toEqual([]);
  });

  it('a stitch was dropped or made: one row in 1200 each, and the fabric shows it', () => {
    const lie = '. . . -1//-1 . . . -1//-1';
    expect(lines('stitch dropped', where)).toEqual([
      `×1: -1, 1 in 150, ${lie} ladder`,
      `×2: -2, 1 in 600, ${lie} ladder`,
      `×3: -3, 1 in 2400, ${lie} ladder`,
    ]);
    expect(lines('stray yarn-over', where).map((line) => line.replace(lie, ''))).toEqual([
      '×1: 1, 1 in 150,  hole',
      '×2: 2, 1 in 600,  hole',
      '×3: 3, 1 in 2400,  hole',
    ]);
    expect(lines('worked together', where).map((line) => line.replace(lie, ''))).toEqual([
      '×1: -1, 1 in 150,  joined',
      '×2: -2, 1 in 600,  joined',
      '×3: -3, 1 in 2400,  joined',
    ]);
    expect(of('stitch dropped', stretch(13, 13))).toEqual([]);
  });

  it('the cast-on itself was miscounted where nobody counted it since: one in 20, and all lies as planned', () => {
    expect(of('cast-on miscounted', stretch(0, 4))).toEqual([]);
    const uncounted = slipsIn({ ...stretch(0, 4), castOn: true });
    const slips = uncounted.filter(({ cause }) => cause === 'cast-on miscounted');
    expect(slips.map(({ by, weight }) => [by, Math.round(1 / weight)])).toEqual([
      [-3, 640],
      [-2, 160],
      [-1, 40],
      [1, 40],
      [2, 160],
      [3, 640],
    ]);
    expect(slips.map((slip) => slip.lie().castOn)).toEqual([-3, -2, -1, 1, 2, 3]);
    expect(slips[0]?.lie()).toMatchObject({ trace: 'none' });
    expect(slips[0]?.lie().rows.map(told).join(' ')).toBe('. . . .');
  });
});

describe('what may have happened in a row that adds four stitches', () => {
  it('one, two or three too few: one row in ten, each more half as likely; or too many: one in thirty', () => {
    expect(lines('spread short', stretch(0, 5))).toEqual([
      '5 ×1: -1, 1 in 20, . . . . /3/',
      '5 ×2: -2, 1 in 40, . . . . /2/',
      '5 ×3: -3, 1 in 80, . . . . /1/',
    ]);
    expect(lines('spread over', stretch(0, 5))).toEqual([
      '5 ×1: 1, 1 in 60, . . . . /5/',
      '5 ×2: 2, 1 in 120, . . . . /6/',
      '5 ×3: 3, 1 in 240, . . . . /7/',
    ]);
    expect(of('spread short', stretch(5, 16))).toEqual([]);
  });

  it('of decreases the same, the other way; of two nothing is left out by counting', () => {
    const row = (by: number) =>
      partOf(30, 'hold', section({ rows: 2, shaping: [{ kind: 'across', row: 1, by }] }));
    const at = (by: number) =>
      slipsIn({ part: row(by), from: 0, latest: 2, to: 2, landmark: 0 })
        .filter(({ cause }) => cause === 'spread short' || cause === 'spread over')
        .map((slip) => slip.by);
    expect(at(-3)).toEqual([1, 2, -1, -2, -3]);
    expect(at(2)).toEqual([]);
  });
});

describe('what may have happened to a group of three', () => {
  it('one or two more or fewer were bound off: one in 180, more and fewer as likely', () => {
    expect(lines('group miscounted', stretch(14, 16))).toEqual([
      '15 ×2: -2, 1 in 1440, /-5/ /-3/',
      '15 ×1: -1, 1 in 360, /-4/ /-3/',
      '15 ×1: 1, 1 in 360, /-2/ /-3/',
      '15 ×2: 2, 1 in 1440, /-1/ /-3/',
      '16 ×2: -2, 1 in 1440, /-3/ /-5/',
      '16 ×1: -1, 1 in 360, /-3/ /-4/',
      '16 ×1: 1, 1 in 360, /-3/ /-2/',
      '16 ×2: 2, 1 in 1440, /-3/ /-1/',
    ]);
    // it is not worked again elsewhere
    expect(of('shaping doubled', stretch(14, 15))).toHaveLength(2);
  });

  it('in which all is bound off nothing can be miscounted', () => {
    const allOff = partOf(
      8,
      'hold',
      section({
        rows: 3,
        shaping: [{ kind: 'bind off', edge: 'right', groups: [{ row: 3, stitches: 8 }] }],
      }),
    );
    const slips = slipsIn({ part: allOff, from: 2, latest: 3, to: 3, landmark: 0 });
    expect(slips.filter(({ cause }) => cause === 'group miscounted')).toEqual([]);
  });
});
