import { describe, expect, it } from 'vitest';
import type { FabricName } from '../../../src/knit/fabric.ts';
import { BIND_OFF } from '../../../src/knit/piece/plan.ts';
import { englishWritten } from '../../../src/knit/written/english.ts';
import { needleIn, sectionLine } from '../../../src/knit/written/row-lines.ts';
import { linesOf, partOf, said } from './rows-by-hand.ts';

/** What stands above the rows of a section, as leaflets have it: common practice, no published source. */
const line = (name: string, fabric: FabricName = 'garter', rows = 2, at = 0) =>
  sectionLine(partOf(20, [{ name, fabric, rows: [`k x ${rows}`] }]), at, englishWritten('US'));

describe('a section is called', () => {
  it.each([
    ['body', 'Body, in garter stitch, 2 rows:'],
    ['a', 'A, in garter stitch, 2 rows:'],
    ['body 2', 'Body 2, in garter stitch, 2 rows:'],
    ['Ärmel', 'Ärmel, in garter stitch, 2 rows:'],
    ['one two three four five six', 'One two three four five six, in garter stitch, 2 rows:'],
  ])('by its name: %s', (name, wanted) => {
    expect(line(name)).toEqual([wanted]);
  });

  it.each([
    'one two three four five six seven',
    '2nd body',
    'body, lower',
    'body: lower',
    'body-part',
    'body ',
    ' body',
    'body  part',
    '',
    '(body)',
  ])('by its fabric, where that may be taken for more than a name: %j', (name) => {
    expect(line(name)).toEqual(['Garter stitch, in garter stitch, 2 rows:']);
  });

  it('without the commas of a rib, and with one row alone', () => {
    expect(line('2', 'rib 1x1', 1)).toEqual(['K1 p1 rib, in k1, p1 rib, 1 row:']);
    expect(line('hem', 'rib 2x2', 12)).toEqual(['Hem, in k2, p2 rib, 12 rows:']);
  });

  it('not at all, where it binds off or is not there', () => {
    expect(line(BIND_OFF)).toEqual([]);
    expect(line('body', 'garter', 2, 1)).toEqual([]);
  });

  it('with the rows that it has, not those up to its end', () => {
    const part = partOf(20, [
      { name: 'hem', fabric: 'garter', rows: ['k x 3'] },
      { name: 'body', rows: ['p', 'k', 'p', 'k', 'p'] },
    ]);
    expect(sectionLine(part, 1, englishWritten('UK'))).toEqual(['Body, in stocking stitch, 5 rows:']);
  });
});

describe('needles', () => {
  it('have the decimal mark of the language', () => {
    expect(needleIn({ point: ',' }, 3.5)).toBe('3,5');
    expect(needleIn({ point: '.' }, 3.25)).toBe('3.25');
    expect(needleIn({ point: ',' }, 4)).toBe('4');
  });

  it('are told where they change, and no more', () => {
    const part = partOf(20, [
      { name: 'hem', needle: 3.5, rows: ['k', 'p'] },
      { name: 'body', needle: 4, rows: ['k', 'p'] },
      { name: 'top', needle: 4, rows: ['k', 'k'] },
    ]);
    expect(linesOf(part)).toEqual([
      'Hem, in stockinette stitch, 2 rows:',
      'Change to 3.5 mm needles.',
      'Row 1 (RS): knit.',
      'Row 2 (WS): purl.',
      'Body, in stockinette stitch, 2 rows:',
      'Change to 4 mm needles.',
      'Row 3 (RS): knit.',
      'Row 4 (WS): purl.',
      'Top, in stockinette stitch, 2 rows:',
      'Row 5 (RS): knit.',
      'Row 6 (WS): knit.',
    ]);
  });
});

describe('a row that binds all off', () => {
  it('is told as that, in its fabric, and loosely where it goes over the head', () => {
    const off = (fabric: FabricName) => partOf(8, [{ name: 'top', fabric, rows: ['k', 'bo all > 0'] }]);
    expect(linesOf(off('stocking')).at(-1)).toBe('Row 2 (WS): Bind off all sts.');
    expect(linesOf(off('rib 2x2')).at(-1)).toBe('Row 2 (WS): Bind off all sts in rib.');
    expect(linesOf(off('stocking'), true).at(-1)).toBe('Row 2 (WS): Bind off all sts loosely.');
    expect(linesOf(off('rib 2x2'), true).at(-1)).toBe('Row 2 (WS): Bind off all sts loosely in rib.');
  });

  it('is not one that leaves stitches, nor one of several orders', () => {
    expect(said(8, ['bo 3, k to end > 5'])).toEqual(['Row 1 (RS): bind off 3 sts, knit to end. (5 sts)']);
  });
});

describe('the block that is repeated', () => {
  it('saves more lines than it costs: a pair of rows once more does, what is no pair is said as it is', () => {
    expect(said(8, ['k', 'p', 'k', 'p'])).toEqual([
      'Row 1 (RS): knit.',
      'Row 2 (WS): purl.',
      'Rep rows 1 and 2 once more.',
    ]);
    expect(said(8, ['k x 2', 'k1, p to end'])).toEqual([
      'Row 1 (RS): knit.',
      'Row 2 (WS): knit.',
      'Row 3 (RS): k1, purl to end.',
    ]);
    expect(said(8, ['k x 4'])).toEqual([
      'Row 1 (RS): knit.',
      'Row 2 (WS): knit.',
      'Rep rows 1 and 2 once more.',
    ]);
  });
});
