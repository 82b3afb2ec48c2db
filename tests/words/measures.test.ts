import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import {
  lengthToType,
  lengthTyped,
  saysAsked,
  saysGrams,
  saysLength,
  saysTyped,
  saysYarnLength,
  yarnToType,
  yarnTyped,
  yarnUnit,
} from '../../src/words/measures.ts';
import { saysNeedle } from '../../src/words/needle.ts';
import { needleChoices } from '../../src/words/needle-choices.ts';
import { needleNumber, needleSizes } from '../../src/words/needle-sizes.ts';
import { loadWords, speak } from '../../src/words/say.ts';
import { plainSpeech } from '../../src/words/settings.ts';

beforeAll(async () => {
  await loadWords('ui');
  await speak(plainSpeech);
});
afterEach(() => speak(plainSpeech));

describe('lengths of yarn', () => {
  it('are metres or yards, said and typed', async () => {
    expect([saysYarnLength(120), yarnUnit(), yarnToType(120), yarnTyped(120)]).toEqual([
      '120\u00a0m',
      'm',
      120,
      120,
    ]);
    await speak({ units: 'in' });
    // a yard is 0.9144 m exactly (international yard and pound agreement, 1959)
    expect([saysYarnLength(91.44), yarnUnit(), yarnToType(91.44), yarnTyped(100)]).toEqual([
      '100\u00a0yd',
      'yd',
      100,
      91.44,
    ]);
    for (let metres = 1; metres < 900; metres += 7.5)
      expect(yarnTyped(yarnToType(metres))).toBeCloseTo(metres, -0.5);
  });
});

describe('a length that was asked for', () => {
  it('is said as it stands in its field', async () => {
    // 55 mm are 2.165 inches: 2 1⁄8 on a tape, and 2¼ to the quarter
    for (const mm of [55, 52.5, 182.88, 53.975, 410])
      for (const units of ['cm', 'in'] as const) {
        await speak({ units });
        expect(saysAsked(mm)).toBe(`${saysTyped(lengthToType(mm))}\u00a0${units}`);
      }
    expect(saysAsked(55)).toBe('2\u00a01⁄8\u00a0in');
    expect(saysAsked(182.88)).toBe('7.2\u00a0in');
  });
});

describe('lengths', () => {
  it('are centimetres to a millimetre, or inches to a quarter as tapes have them', async () => {
    expect([560, 425.4, 4].map(saysLength)).toEqual(['56\u00a0cm', '42.5\u00a0cm', '0.4\u00a0cm']);
    await speak({ units: 'in' });
    // one inch is 25.4 mm exactly (international yard and pound agreement, 1959)
    expect([25.4, 425.45, 419.1, 6, 12.7, 0].map(saysLength)).toEqual([
      '1\u00a0in',
      '16¾\u00a0in',
      '16½\u00a0in',
      '¼\u00a0in',
      '½\u00a0in',
      '0\u00a0in',
    ]);
    await speak({ language: 'de' });
    expect(saysLength(419.1)).toBe('16½\u00a0Zoll');
  });

  it('come back from a field as they went in', async () => {
    for (const units of ['cm', 'in'] as const) {
      await speak({ units });
      // to a millimetre, or an eighth of an inch
      for (let mm = 5; mm < 1200; mm += 13)
        expect(Math.abs(lengthTyped(lengthToType(mm)) - mm)).toBeLessThanOrEqual(
          units === 'cm' ? 0.5 : 25.4 / 16,
        );
      expect(lengthToType(lengthTyped(16.5))).toBe(16.5);
    }
  });

  it('stand in a field in the eighths of a tape where she measures in inches, and are said so where she typed them', async () => {
    await speak({ units: 'in' });
    expect([4.25, 4, 0.125, 4.375, -0.5, 4.3].map(saysTyped)).toEqual([
      '4¼',
      '4',
      '1⁄8',
      '4\u00a03⁄8',
      '−½',
      '4.3',
    ]);
    expect([42, 108, 560].map((mm) => saysTyped(lengthToType(mm)))).toEqual(['1\u00a05⁄8', '4¼', '22']);
    expect([4.375 * 25.4, 4.4 * 25.4].map(saysLength)).toEqual(['4\u00a03⁄8\u00a0in', '4½\u00a0in']);
    // what the app worked out, and is a short number of inches by chance, beside the same typed
    expect([11.43, 53.34, 45.72].map((mm) => saysTyped(lengthToType(mm, true)))).toEqual([
      '½',
      '2\u00a01⁄8',
      '1¾',
    ]);
    expect([11.43, 53.34, 45.72].map((mm) => saysTyped(lengthToType(mm)))).toEqual(['0.45', '2.1', '1.8']);
    await speak({ units: 'cm' });
    expect([4.25, 4.125].map(saysTyped)).toEqual(['4.25', '4.125']);
  });

  it('of yarn are metres or yards (a yard is 0.9144 m exactly); weights stay grams, as on the band', async () => {
    expect(saysYarnLength(120)).toBe('120\u00a0m');
    expect([50, 7.25].map(saysGrams)).toEqual(['50\u00a0g', '7.3\u00a0g']);
    await speak({ units: 'in' });
    expect(saysYarnLength(91.44)).toBe('100\u00a0yd');
  });
});

describe('needle sizes', () => {
  it('are metric, US or old UK, with the millimetres always beside', async () => {
    expect(saysNeedle(4)).toBe('4\u00a0mm');
    await speak({ needles: 'US' });
    expect([4, 6.5, 3].map(saysNeedle)).toEqual([
      'US\u00a06 (4\u00a0mm)',
      'US\u00a010½ (6.5\u00a0mm)',
      '3\u00a0mm',
    ]);
    await speak({ needles: 'UK', language: 'de' });
    expect([4, 3.25, 3.5, 10].map(saysNeedle)).toEqual([
      'UK\u00a08 (4\u00a0mm)',
      'UK\u00a010 (3,25\u00a0mm)',
      '3,5\u00a0mm',
      'UK\u00a0000 (10\u00a0mm)',
    ]);
  });

  it('follow no formula: US and UK sum to 14 for nine sizes, but not for US 3', () => {
    // computed from the conversion table of Sarah Bradberry, knitting-and.com (1996–2002)
    const sums = needleSizes.map((mm) => Number(needleNumber(mm, 'US')) + Number(needleNumber(mm, 'UK')));
    expect(sums.filter((sum) => sum === 14)).toHaveLength(9);
    expect(Number(needleNumber(3.25, 'US')) + Number(needleNumber(3.25, 'UK'))).toBe(13);
    expect(needleNumber(4.5, 'US')).toBe(needleNumber(4.5, 'UK'));
  });

  it('go on above 10 mm by the US numbers that are sold, which have no old UK number', () => {
    // chart at fineleaffibres.com, 'Knitting needle size conversion US to mm'
    const thick = [12, 15, 19, 25];
    expect(thick.map((mm) => needleNumber(mm, 'US'))).toEqual(['17', '19', '35', '50']);
    expect(needleNumber(2.5, 'US')).toBe('1½');
    expect(thick.map((mm) => needleNumber(mm, 'UK'))).toEqual([undefined, undefined, undefined, undefined]);
  });

  it('go on below 2 mm by the US numbers of thin needles, a nought more for each quarter of a millimetre', async () => {
    // Craft Yarn Council, Standard Yarn Weight System, Lace: 1.5–2.25 mm, 'Recommended Needle U.S. Size Range' 000–1;
    // 1, 1.25 and 1.75 mm as 00000, 0000 and 00 in the charts at sizechartly.com ('Knitting Needle Size Conversion
    // Chart') and knowsize.com ('Knitting Needle Size report'), which agree with it at 1.5 mm
    const noughts = { 1: '00000', 1.25: '0000', 1.5: '000', 1.75: '00' };
    for (const [mm, published] of Object.entries(noughts))
      expect(needleNumber(Number(mm), 'US'), mm).toBe(`${published.length}/0`);
    await speak({ needles: 'US' });
    expect(
      needleChoices(undefined)
        ?.slice(1, 6)
        .map(({ label }) => label),
    ).toEqual([
      'US\u00a05/0 (1\u00a0mm)',
      'US\u00a04/0 (1.25\u00a0mm)',
      'US\u00a03/0 (1.5\u00a0mm)',
      'US\u00a02/0 (1.75\u00a0mm)',
      'US\u00a00 (2\u00a0mm)',
    ]);
  });

  it('rise, and each number of a system stands for one size', () => {
    expect([...needleSizes].sort((a, b) => a - b)).toEqual(needleSizes);
    for (const system of ['US', 'UK'] as const) {
      const numbers = needleSizes.map((mm) => needleNumber(mm, system)).filter((n) => n !== undefined);
      expect(new Set(numbers).size).toBe(numbers.length);
      expect(numbers.length).toBeGreaterThan(14);
    }
  });

  it('have Japanese numbers 0.3 mm apart from 2.1 mm on', async () => {
    // the conversion table of Sarah Bradberry, knitting-and.com: 0 is 2.1, 8 is 4.5, 10 is 5.1, 15 is 6.6 mm
    expect([2.1, 4.5, 5.1, 6.6].map((mm) => needleNumber(mm, 'JP'))).toEqual(['0', '8', '10', '15']);
    expect(needleNumber(4, 'JP')).toBeUndefined();
    await speak({ needles: 'JP' });
    expect(saysNeedle(4.5)).toBe('JP\u00a08 (4.5\u00a0mm)');
  });

  it('are typed in millimetres and chosen where they have numbers, since 6 is not 6 mm', async () => {
    expect(needleChoices(4)).toBeUndefined();
    await speak({ needles: 'US' });
    const six = needleChoices(4)?.filter(({ label }) => label.startsWith('US\u00a06 '));
    expect(six).toEqual([{ value: '4', label: 'US\u00a06 (4\u00a0mm)' }]);
    expect(needleChoices(4)?.find(({ value }) => value === '6')?.label).toBe('US\u00a010 (6\u00a0mm)');
    // thin to thick, with a size in hand that has no number, and nothing chosen where there is none in hand
    const sizes = (needleChoices(4.2) ?? []).map(({ value }) => Number(value));
    expect(sizes).toContain(4.2);
    expect([...sizes].sort((a, b) => a - b)).toEqual(sizes);
    expect(needleChoices(undefined)?.[0]?.value).toBe('');
    await speak({ needles: 'UK' });
    expect(needleChoices(4)).toHaveLength(17);
  });

  it('leave a size between the numbers in millimetres', async () => {
    await speak({ needles: 'US' });
    expect(saysNeedle(4.2)).toBe('4.2\u00a0mm');
  });
});
