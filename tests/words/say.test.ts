import fc from 'fast-check';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { fault } from '../../src/knit/fault.ts';
import type { PlannedRow } from '../../src/knit/piece/planned.ts';
import type { Step } from '../../src/knit/row/step.ts';
import { saysFabric, saysShaping, saysSide, saysStitches } from '../../src/words/craft.ts';
import { loadFaults, saysFault } from '../../src/words/fault.ts';
import { languages, languageTable } from '../../src/words/languages.ts';
import { saysList, saysNumber } from '../../src/words/numbers.ts';
import { saysRow } from '../../src/words/row.ts';
import { loadWords, say, speak, wordMessage } from '../../src/words/say.ts';
import { plainSpeech, speechFor } from '../../src/words/settings.ts';

beforeAll(() => loadWords('ui', 'craft', 'row', 'garment'));
afterEach(() => speak(plainSpeech));

const edge = (side: 'right' | 'left', by: number) => ({ kind: 'edge', edge: side, by }) as const;

describe('what the app says', () => {
  it('puts figures into a message, numbers as the language writes them', async () => {
    expect(say('garment.rowNext', { row: 41, rows: 1200 })).toBe('Row 41 of 1,200 is next');
    await speak({ language: 'de' });
    expect(say('garment.rowNext', { row: 41, rows: 1200 })).toBe('Reihe 41 von 1.200 kommt');
  });

  it('takes the plural that the language has for the count', async () => {
    expect([0, 1, 2].map(saysStitches)).toEqual(['0 stitches', '1 stitch', '2 stitches']);
    await speak({ language: 'de' });
    expect([0, 1, 2].map(saysStitches)).toEqual(['0 Maschen', '1 Masche', '2 Maschen']);
    await speak({ language: 'fr' });
    // CLDR: French has its singular from 0 to below 2
    expect([0, 1, 2].map(saysStitches)).toEqual(['0 maille', '1 maille', '2 mailles']);
  });

  it('says bind off or cast off, stockinette or stocking stitch, by one setting', async () => {
    expect(say('craft.markBindOffAll')).toBe('bind off all stitches');
    expect(saysFabric('stocking')).toBe('stockinette');
    await speak({ terms: 'UK' });
    expect(say('craft.markBindOffAll')).toBe('cast off all stitches');
    expect(saysFabric('stocking')).toBe('stocking stitch');
    expect(saysFabric('moss')).toBe('moss stitch');
  });

  it('keeps a name that is written from right to left apart from the sentence around it, as a bdi element would', () => {
    // Unicode Bidirectional Algorithm (UAX #9), 2.4: first strong isolate and its end
    expect(wordMessage('{name}: row {row} of {rows}', { name: 'צעיף', row: 3, rows: 40 }, plainSpeech)).toBe(
      '\u2068צעיף\u2069: row 3 of 40',
    );
    expect(wordMessage('{name} goes', { name: 'وشاح 2' }, plainSpeech)).toBe('\u2068وشاح 2\u2069 goes');
    expect(wordMessage('{name} goes', { name: 'Écharpe 2' }, plainSpeech)).toBe('Écharpe 2 goes');
  });

  it('keeps brackets that come in with a figure', () => {
    expect(wordMessage('Work {row}', { row: '[k2, m1] 3 times' }, plainSpeech)).toBe('Work [k2, m1] 3 times');
  });

  it('shows a missing figure by its name rather than a hole', () => {
    expect(wordMessage('Row {row}', {}, plainSpeech)).toBe('Row {row}');
  });

  it('has every catalogue in use ready before the language changes', async () => {
    const changing = speak({ language: 'de' });
    expect(saysSide('RS', true)).toBe('right side');
    await changing;
    expect(saysSide('RS', true)).toBe('Hinreihe');
    expect(say('ui.close')).toBe('Schließen');
  });

  it('names shaping at both edges as one thing', () => {
    expect(saysShaping({ shaping: [edge('right', -1), edge('left', -1)] })).toBe('decrease at both edges');
    expect(saysShaping({ shaping: [edge('right', -1), edge('left', 1)] })).toBe(
      'decrease at the right edge and increase at the left edge',
    );
    expect(saysShaping({ shaping: [{ kind: 'bind off', edge: 'left', by: -6 }] })).toBe(
      'bind off 6 at the left edge',
    );
    expect(saysShaping({ shaping: [{ kind: 'across', edge: 'across', by: 8 }] })).toBe(
      'increase 8 across the row',
    );
    expect(saysShaping({ shaping: [] })).toBe('');
  });

  it('says of a row whether it shapes at its start or its end: turned over, the left edge lies right', async () => {
    const left: PlannedRow['shaping'] = [{ kind: 'bind off', edge: 'left', by: -6 }];
    expect(saysShaping({ shaping: left, side: 'WS' })).toBe('bind off 6 at the start of the row');
    expect(saysShaping({ shaping: [edge('left', -1)], side: 'RS' })).toBe('decrease at the end of the row');
    expect(saysShaping({ shaping: [edge('right', -1)], side: 'RS' })).toBe(
      'decrease at the start of the row',
    );
    // told in the order in which the plan has them: that in which she meets them
    expect(saysShaping({ shaping: [edge('left', 1), edge('right', -1)], side: 'WS' })).toBe(
      'increase at the start of the row and decrease at the end of the row',
    );
    expect(saysShaping({ shaping: [edge('right', -1), edge('left', -1)], side: 'WS' })).toBe(
      'decrease at both edges',
    );
    await speak({ language: 'de' });
    expect(saysShaping({ shaping: left, side: 'WS' })).toBe('6 abketten am Reihenanfang');
    await speak(plainSpeech);
  });

  it('calls holes what they are, and a gap as wide as a neck no hole', () => {
    const across = (by: number) => [{ kind: 'across', edge: 'across', by } as const];
    const holes = (work: 'bo' | 'co', times: number): Step[] => [
      {
        repeat: [
          { work: 'k', times: 8 },
          { work, times: 3 },
        ],
        times,
      },
      { work: 'k', until: { left: 0 } },
    ];
    // the row's own words say what is bound off or cast on there
    expect(saysShaping({ shaping: across(-18), steps: holes('bo', 6) })).toBe('6 button holes');
    expect(saysShaping({ shaping: across(18), steps: holes('co', 6) })).toBe('6 button holes');
    expect(saysShaping({ shaping: across(-3), steps: holes('bo', 1) })).toBe('button hole');
    expect(saysShaping({ shaping: across(3), steps: holes('co', 1) })).toBe('button hole');
    const neck: Step[] = [
      { work: 'k', times: 30 },
      { work: 'bo', times: 16 },
      { work: 'k', until: { left: 0 } },
    ];
    expect(saysShaping({ shaping: across(-16), steps: neck })).toBe('bind off 16 at the middle');
  });

  it('prints a row in the language, terms and wording of the moment', async () => {
    const row = [
      { work: 'bo', times: 6 },
      { work: 'k', times: 2 },
      { work: 'k2tog', times: 1 },
      { work: 'k', until: { left: 4 } },
      {
        repeat: [
          { work: 'k', times: 1 },
          { work: 'p', times: 1 },
        ],
        until: { left: 0 },
      },
    ] as const;
    expect(saysRow(row)).toMatch(/^bind off 6 sts, k2, k2tog, knit to last 4 sts, /);
    await speak({ terms: 'UK', rows: 'full' });
    expect(saysRow(row)).toMatch(/^cast off 6 stitches, knit 2, knit 2 together, knit to last 4 stitches, /);
    await speak({ language: 'de', rows: 'abbreviated' });
    expect(saysRow(row)).toBe(
      '6 M abketten, 2 re, 2 M re zusstr, rechts bis 4 M vor dem Ende, *1 re, 1 li; ab * wiederholen bis zum Ende',
    );
    await speak({ rows: 'full' });
    expect(saysRow(row.slice(1, 3))).toBe('2 rechts, 2 Maschen rechts zusammenstricken');
    expect(saysRow([{ work: 'bo', until: { left: 0 } }])).toBe('alle Maschen im Muster abketten');
    expect(saysRow([{ work: 'p', until: { left: 0 } }])).toBe('links');
    await speak({ language: 'fr', rows: 'abbreviated' });
    expect(saysRow(row)).toBe(
      'rab 6 m, 2 m end, 2 m ens end, end jusqu’aux 4 dern m, *1 m end, 1 m env\u00a0; répéter depuis * jusqu’à la fin',
    );
    await speak({ rows: 'full' });
    expect(saysRow(row.slice(1, 3))).toBe('2 mailles à l’endroit, 2 mailles ensemble à l’endroit');
    expect(saysRow([{ work: 'bo', until: { left: 0 } }])).toMatch(/^rabattre toutes les mailles/);
  });

  it('says a fault in the language, and by its code where its catalogue cannot be had', async () => {
    const known = fault('bad rows', { mostRows: 2000, rows: 2001 });
    // no catalogue has it, whichever of them a test before this one has loaded
    const unknown = { ...known, code: 'of tomorrow' } as unknown as typeof known;
    expect(saysFault(unknown)).toBe('of tomorrow');
    await loadFaults();
    expect(saysFault(unknown)).toBe('of tomorrow');
    await speak({ language: 'de' });
    expect(saysFault(known)).toMatch(/2\.000.*2\.001/);
  });

  it('joins words and writes numbers by the language', async () => {
    expect(saysList(['back', 'front', 'sleeve'])).toBe('back, front, and sleeve');
    expect(saysNumber(0.125, { percent: true, digits: 0 })).toBe('13%');
    await speak({ language: 'de' });
    expect(saysList(['Rücken', 'Vorderteil', 'Ärmel'])).toBe('Rücken, Vorderteil und Ärmel');
    expect(saysNumber(3.75, { plain: true })).toBe('3,75');
  });
});

describe('the first guess at how to speak', () => {
  it('follows the device: American, British, German, French, and English in centimetres for all others', () => {
    expect(speechFor(['en-US'])).toMatchObject({ language: 'en', terms: 'US', units: 'in', needles: 'US' });
    expect(speechFor(['en-GB', 'en'])).toMatchObject({ language: 'en', terms: 'UK', units: 'cm' });
    expect(speechFor(['de-AT'])).toMatchObject({ language: 'de', units: 'cm' });
    expect(speechFor(['fr-CH', 'de'])).toMatchObject({ language: 'fr', units: 'cm', needles: 'mm' });
    expect(speechFor(['it-IT', 'de'])).toMatchObject({ language: 'de' });
    expect(speechFor(['ja'])).toMatchObject({ language: 'en', units: 'cm', needles: 'mm' });
    expect(speechFor([])).toMatchObject({ language: 'en' });
  });

  it('writes tenths and hundredths as Intl does, rounded as it rounds', async () => {
    const odd = [
      1.005, 2.675, 0.045, 8.345, 998.999, 998.9999, 999.5, 0.0000004, 1e-7, 0.5, 1.25, -1.25, 3.999,
    ];
    const any = fc.oneof(
      fc.integer({ min: 0, max: 99_900_000 }).map((n) => n / 100_000),
      fc.double({ min: 0, max: 1001, noNaN: true }),
      fc.constantFrom(...odd),
    );
    for (const language of languages) {
      await speak({ ...plainSpeech, language });
      for (const digits of [0, 1, 2, 3]) {
        const format = new Intl.NumberFormat(languageTable[language].locale, {
          maximumFractionDigits: digits,
        });
        const law = fc.property(any, (n) => {
          expect(saysNumber(n, { digits })).toBe(format.format(n));
        });
        fc.assert(law, { endOnFailure: true, numRuns: 300 });
      }
    }
  });

  it('makes no format for a needle or a gauge: the first takes longer than the rest of a screen', async () => {
    const made = vi.spyOn(Intl, 'NumberFormat');
    expect([4, 3.75, 21.5, 0].map((n) => saysNumber(n))).toEqual(['4', '3.75', '21.5', '0']);
    await speak({ language: 'fr' });
    expect(saysNumber(3.25)).toBe('3,25');
    expect(made).not.toHaveBeenCalled();
    made.mockRestore();
  });

  it('writes small whole numbers and picks plurals as Intl does', async () => {
    const locales = {
      'en-US': {},
      'en-GB': { terms: 'UK' },
      'de-DE': { language: 'de' },
      'fr-FR': { language: 'fr' },
    } as const;
    for (const [locale, change] of Object.entries(locales)) {
      await speak({ ...plainSpeech, ...change });
      const format = new Intl.NumberFormat(locale, { maximumFractionDigits: 2 });
      const rules = new Intl.PluralRules(locale);
      for (const n of [...Array.from({ length: 1002 }, (_, i) => i), -1, 0.5, 1.5, 12345]) {
        expect(saysNumber(n)).toBe(format.format(n));
        const forms = { one: 'one', other: 'other' };
        expect(wordMessage(forms, { count: n }, { ...plainSpeech, ...change })).toBe(rules.select(n));
      }
      expect(saysList(['back'])).toBe(new Intl.ListFormat(locale).format(['back']));
      expect(saysList([])).toBe('');
    }
  });
});
