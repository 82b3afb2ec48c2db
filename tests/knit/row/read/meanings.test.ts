import { describe, expect, it } from 'vitest';
import {
  beginsWith,
  beginsWithNumber,
  endsWith,
  hasWord,
  means,
  withoutWords,
} from '../../../../src/knit/row/read/meanings.ts';

describe('a word that answers to a meaning', () => {
  it('is one of its words, whole', () => {
    expect(means('rows', 'beginning of a label')).toBe(true);
    expect(means('row', 'after a stitch count')).toBe(true);
    expect(means('ro', 'beginning of a label')).toBe(false);
    expect(means('Row', 'beginning of a label')).toBe(false);
    expect(means(undefined, 'yarn')).toBe(false);
    expect(means('', 'yarn')).toBe(false);
  });

  it('is found within a text as a word of its own, in small letters', () => {
    expect(hasWord('a ball of red', 'yarn')).toBe(true);
    expect(hasWord('the ball', 'yarn')).toBe(true);
    expect(hasWord('ballet', 'yarn')).toBe(false);
    expect(hasWord('football', 'yarn')).toBe(false);
    expect(hasWord('a BALL', 'yarn')).toBe(false);
  });

  it('begins a text, in capitals or not', () => {
    expect(['Ball two', 'ball', 'WOOL'].map((text) => beginsWith(text, 'yarn'))).toEqual([true, true, true]);
    expect(['a ball', 'balls'].map((text) => beginsWith(text, 'yarn'))).toEqual([false, false]);
  });

  it('ends a text, behind a blank or a bracket', () => {
    const ends = ['join the Wool', 'wool', 'two (ball', 'woolly wool'];
    expect(ends.map((text) => endsWith(text, 'yarn'))).toEqual([true, true, true, true]);
    expect(['wool ', 'lambswool', 'wool,'].map((text) => endsWith(text, 'yarn'))).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('stands behind a number that begins a text', () => {
    const numbers = ['1st row', '22ND', '3rd', '14th'];
    expect(numbers.map((text) => beginsWithNumber(text, 'ordinal ending'))).toEqual([true, true, true, true]);
    const none = ['st', 'row 1st', '1 st', '1stitch'];
    expect(none.map((text) => beginsWithNumber(text, 'ordinal ending'))).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });

  it('is taken out wherever it stands, and what is left has single blanks', () => {
    expect(withoutWords('wool a  ball and ballet  skein', 'yarn')).toBe('a and ballet');
    expect(withoutWords('yarn', 'yarn')).toBe('');
    // a mark is one of them as well as a word
    expect(withoutWords('a size b', 'size')).toBe('a b');
  });
});
