import { describe, expect, it } from 'vitest';
import { designOf, newForm } from '../../src/app/drafts/design/form.ts';
import { armholeKinds } from '../../src/knit/garment/kinds/armholes.ts';
import { draftSize } from '../../src/knit/written/work-size.ts';
import { measuresOf } from '../../src/screens/pass-on/measures-of.ts';
import { told } from '../told.ts';

/** The measures beside a drawing, held against stitches and rows at the gauge of the default swatch: 21 and 28 to 10 cm. */

const drafted = (choices: object) => {
  const form = newForm();
  const made = draftSize('M', designOf({ ...form, choices: { ...form.choices, ...choices } }), {
    name: 'Fen',
  });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
};

const of = (made: ReturnType<typeof drafted>, piece: string) => {
  const found = made.garment.pieces.find(({ recipe }) => recipe.name === piece);
  const { measures } = measuresOf(found?.makes[0]?.parts ?? []);
  const mm = Object.fromEntries(measures.map((one) => [one.key, one.mm]));
  return { parts: found?.makes[0]?.parts ?? [], mm };
};

const stitches = (n: number) => (n * 100) / 21;
const rows = (n: number) => (n * 100) / 28;

describe.each(armholeKinds)('the measures of a drawing, %s', (armhole) => {
  const made = drafted({ armhole });

  it.each(['Back', 'Front', 'Sleeve'])(
    'of the %s: heights by section add up, widths are stitches',
    (piece) => {
      const { parts, mm } = of(made, piece);
      const sections = Object.entries(mm).filter(([key]) => key.startsWith('section '));
      const sum = sections.reduce((all, [, height]) => all + height, 0);
      // a section too low to be measured is left out
      expect(Math.abs(sum - (mm['in all'] ?? 0))).toBeLessThan(16);
      const counts = parts[0]?.rows.filter(({ section }) => section > 0).map(({ before }) => before) ?? [];
      expect(mm['at its widest']).toBeCloseTo(stitches(Math.max(...counts)), 0);
    },
  );
});

it('the shoulders of back and front are as wide as the stitches bound off', () => {
  const made = drafted({});
  for (const piece of ['Back', 'Front']) {
    const { mm } = of(made, piece);
    // 27 stitches are bound off for a shoulder in the default M
    expect(mm.shoulder).toBeGreaterThan(stitches(24));
    expect(mm.shoulder).toBeLessThan(stitches(29));
  }
  const [back, front] = [of(made, 'Back').mm, of(made, 'Front').mm];
  expect(Math.abs((back.shoulder ?? 0) - (front.shoulder ?? 0))).toBeLessThan(6);
  expect(Math.abs((back.neck ?? 0) - (front.neck ?? 0))).toBeLessThan(6);
  expect((front['neck depth'] ?? 0) - (back['neck depth'] ?? 0)).toBeGreaterThan(rows(8));
});

it('half a front has its shoulder too', () => {
  const made = drafted({ kind: 'cardigan' });
  expect(Math.abs((of(made, 'Front').mm.shoulder ?? 0) - (of(made, 'Back').mm.shoulder ?? 0))).toBeLessThan(
    6,
  );
});
