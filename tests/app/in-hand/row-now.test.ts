import { describe, expect, it } from 'vitest';
import { feelsAt } from '../../../src/app/device/feels.ts';
import { isShaping, nextShaping, ownWordsOf, rowAt } from '../../../src/app/in-hand/row-now.ts';
import { sampleGarment } from '../../../src/knit/garment/sample.ts';
import { plan } from '../../../src/knit/piece/plan.ts';

const partOf = (piece: string, index: number) => {
  const recipe = sampleGarment.pieces.find(({ name }) => name === piece);
  const made = recipe && plan(recipe);
  const part = made?.ok ? made.value.parts[index] : undefined;
  if (part === undefined) throw new Error(`no part ${index} of ${piece}`);
  return part;
};

const back = partOf('Back', 0);
const leftShoulder = partOf('Front', 1);

// The rows of the sample are our own: rib 1 to 18, body to 116, armholes from 117, shoulders from 187, 192 in all.
describe('what the hand is told after a row', () => {
  it('is plain where a plain row comes', () => expect(feelsAt(back, 1)).toEqual(['plain']));

  it('is shaping where a shaping row comes', () => expect(feelsAt(back, 118)).toEqual(['shaping']));

  it('is the end of a section where the next row lies in another', () =>
    expect(feelsAt(back, 18)).toEqual(['section end']));

  it('is both where a section ends and shaping comes', () =>
    expect(feelsAt(back, 116)).toEqual(['section end', 'shaping']));

  it('tells that something is done before the row, instead of an end and before what the row is', () => {
    expect(feelsAt(back, 1, true)).toEqual(['before row']);
    expect(feelsAt(back, 116, true)).toEqual(['before row', 'shaping']);
  });

  it('is the end of the part where no row comes', () => expect(feelsAt(back, 192)).toEqual(['part end']));
});

describe('the next shaping', () => {
  it('lies after the row in hand, however far', () => {
    expect(nextShaping(back, 0)?.n).toBe(117);
    expect(nextShaping(back, 116)?.n).toBe(118);
    expect(nextShaping(back, 191)).toBeUndefined();
  });

  it('is not the row that binds off all that is left: that is an end', () => {
    const last = leftShoulder.rows.at(-1);
    expect(last?.after).toBe(0);
    expect(last && isShaping(last)).toBe(false);
    expect(nextShaping(leftShoulder, leftShoulder.rows.length - 2)).toBeUndefined();
  });
});

describe('the pattern’s own words for a row', () => {
  it('are found by its number within its section, and most rows have none', () => {
    const own = { 1: 'work the rose chart', 3: 'as she likes' };
    const sections = back.sections.map((section, i) => (i === 1 ? { ...section, own } : section));
    const words = (n: number) => {
      const row = rowAt(back, n - 1);
      return row && ownWordsOf({ ...back, sections }, row);
    };
    // the body begins with row 19
    expect([17, 18, 19, 20, 21, 22].map(words)).toEqual([
      undefined,
      undefined,
      'work the rose chart',
      undefined,
      'as she likes',
      undefined,
    ]);
  });
});

describe('the row in hand', () => {
  it('is none behind the last one', () => {
    expect(rowAt(back, 191)?.n).toBe(192);
    expect(rowAt(back, 192)).toBeUndefined();
  });
});
