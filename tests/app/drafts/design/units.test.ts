import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { type DesignForm, designOf, newForm } from '../../../../src/app/drafts/design/form.ts';
import type { Body } from '../../../../src/knit/garment/design.ts';
import { draft } from '../../../../src/knit/garment/draft.ts';
import { readNumber } from '../../../../src/ui/field/read-number.ts';
import { lengthToType, lengthTyped, saysTyped } from '../../../../src/words/measures.ts';
import { speak } from '../../../../src/words/say.ts';
import { plainSpeech, type Speech } from '../../../../src/words/settings.ts';
import { someBody } from '../../../arbitraries/design.ts';
import { same } from '../../../same.ts';

/** RIDGELINE_DRAFTS=80 for the whole of it; a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 14);

afterEach(() => speak(plainSpeech));

type Units = Speech['units'];

const other = (units: Units): Units => (units === 'cm' ? 'in' : 'cm');

/** What a field has in it, and what is stored of what is typed into it. */
const shown = (mm: number): string => saysTyped(lengthToType(mm));
const stored = (text: string): number => lengthTyped(readNumber(text) ?? Number.NaN);

/** A length as somebody types it who has a tape of these units: sixteenths or hundredths of an inch, half millimetres. */
const typedIn = (units: Units, mm: number, finer: boolean): string => {
  const unit = units === 'in' ? 25.4 : 10;
  const grain = units === 'in' ? (finer ? 100 : 16) : finer ? 20 : 10;
  return String(Math.round((mm / unit) * grain) / grain);
};

const someTyped = fc.record({
  units: fc.constantFrom<Units>('cm', 'in'),
  finer: fc.boolean(),
  body: someBody(),
  length: fc.integer({ min: 450, max: 750 }),
});

const typedForm = (body: Readonly<Record<string, string>>, length: string): DesignForm => ({
  ...newForm(),
  person: {},
  body: Object.fromEntries(
    Object.entries(body).map(([name, text]) => [name, stored(text)]),
  ) as unknown as Body,
  own: { lengthMm: stored(length) },
});

const recipesOf = (form: DesignForm) => {
  const made = draft(designOf(form));
  return made.ok ? made.value.recipes : made.faults.map(({ code }) => code);
};

describe('whoever changes from centimetres to inches and back', () => {
  it('finds in each field what she had typed', async () => {
    for (const units of ['cm', 'in'] as const) {
      await speak({ units });
      const typed = [...Array(4000)].map((_, i) => String(((units === 'in' ? 600 : 1200) + i) / 100));
      const sixteenths = [...Array(800)].map((_, i) => String(1 + i / 16));
      for (const text of units === 'in' ? [...typed, ...sixteenths] : typed) {
        const mm = stored(text);
        await speak({ units: other(units) });
        same(shown(mm) === '', false, () => text);
        await speak({ units });
        // an eighth stands there as on the tape, the same number
        const isEighth = units === 'in' && Number.isInteger(8 * Number(text));
        same(isEighth ? String(readNumber(shown(mm))) : shown(mm), isEighth ? String(Number(text)) : text);
        same(stored(shown(mm)), mm);
      }
    }
  });

  it('knits the same garment, also where she types again what stands there', async () => {
    const seen = { drafted: 0 };
    await fc.assert(
      fc.asyncProperty(someTyped, async ({ units, finer, body, length }) => {
        await speak({ units });
        const texts = Object.fromEntries(
          Object.entries(body).map(([name, mm]) => [name, typedIn(units, mm, finer)]),
        );
        const form = typedForm(texts, typedIn(units, length, finer));
        const recipes = recipesOf(form);
        if (typeof recipes[0] === 'object') seen.drafted += 1;
        await speak({ units: other(units) });
        expect(recipesOf(form)).toEqual(recipes);
        await speak({ units });
        const again = Object.fromEntries(Object.entries(form.body).map(([name, mm]) => [name, shown(mm)]));
        expect(recipesOf(typedForm(again, shown(Number(form.own.lengthMm))))).toEqual(recipes);
      }),
      { numRuns: DRAFTS },
    );
    expect(seen.drafted).toBeGreaterThan(DRAFTS / 4);
  });
});
