import { describe, expect, it } from 'vitest';
import { nextStamp, stampBefore, stampShape, writerOf } from '../../../src/store/uniting/stamp.ts';

// 1000 is rs in base 36 (27 · 36 + 28), 1001 is rt; stamps lie in boxes and backups, so that their letters never change
const AT_1000 = '0000000rs.00000.aa';

describe('a stamp', () => {
  it('is the time in nine signs of base 36, a counter in five, and the letters of the device', () => {
    expect(nextStamp(undefined, 1000, 'aa')).toBe(AT_1000);
    expect(nextStamp(undefined, 1000.9, 'aa')).toBe(AT_1000);
  });

  it('of the same millisecond as the highest one seen, or of one before it, counts on from that one', () => {
    expect(nextStamp(AT_1000, 1000, 'bb')).toBe('0000000rs.00001.bb');
    expect(nextStamp('0000000rs.0000z.aa', 7, 'bb')).toBe('0000000rs.00010.bb');
    expect(nextStamp(AT_1000, 1001, 'bb')).toBe('0000000rt.00000.bb');
  });

  it('counts up to five signs and takes the next millisecond then', () => {
    expect(nextStamp('0000000rs.zzzzy.aa', 7, 'bb')).toBe('0000000rs.zzzzz.bb');
    expect(nextStamp('0000000rs.zzzzz.aa', 7, 'bb')).toBe('0000000rt.00000.bb');
  });

  it('of a clock before 1970 counts from the beginning', () => {
    expect(nextStamp(undefined, -5, 'aa')).toBe('000000000.00001.aa');
  });

  it('of what was written before there were any is named by when it was changed and what it was', () => {
    expect(stampBefore(1000, 'of0what')).toBe('000000000.00000.0000000rsof0what');
    expect(stampBefore(-1, 'x')).toBe('000000000.00000.000000000x');
  });

  it('tells its device', () => {
    expect(writerOf(AT_1000)).toBe('aa');
    expect(writerOf(stampBefore(1000, 'x'))).toBe('0000000rsx');
  });

  it('is told from other texts by its whole form', () => {
    for (const stamp of [AT_1000, '0000000rs.00000.', `0000000rs.00000.${'a'.repeat(64)}`])
      expect(stampShape.test(stamp)).toBe(true);
    for (const text of [`x${AT_1000}`, `${AT_1000}.`, '0000000rs.0000.aa', '0000000RS.00000.aa', '', 'aa'])
      expect(stampShape.test(text)).toBe(false);
    expect(stampShape.test(`0000000rs.00000.${'a'.repeat(65)}`)).toBe(false);
  });
});
