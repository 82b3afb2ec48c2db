import { describe, expect, it } from 'vitest';
import { inAnotherSize } from '../../../../src/app/drafts/design/another-size.ts';
import { type DesignForm, designOf, newForm } from '../../../../src/app/drafts/design/form.ts';
import { bodyOfSize } from '../../../../src/knit/garment/bodies.ts';
import { draft } from '../../../../src/knit/garment/draft.ts';
import { given } from '../../../store/scenario.ts';

const bodyOf = (size: string) => {
  const body = bodyOfSize('women', size);
  if (body === undefined) throw new Error(`no size ${size}`);
  return body;
};

const first: DesignForm = {
  ...newForm(),
  name: 'Heather',
  choices: { kind: 'pullover', armhole: 'set-in', neck: 'V', fit: 'loose' },
  own: { lengthMm: 480, 'neck.widthMm': 150, 'hem.heightMm': 70, silhouette: 'straight' },
  overruled: ['unusual ease'],
};
const size = (name: string) =>
  inAnotherSize(first, { name: 'Another', person: { table: 'women', size: name }, body: bodyOf(name) });

describe('a design in another size', () => {
  it('has its choices, swatch and borders; lengths that were set move with the measure that drives them', () => {
    const large = size('2X');
    expect(large).toMatchObject({
      name: 'Another',
      choices: first.choices,
      swatches: first.swatches,
      fabric: first.fabric,
      person: { table: 'women', size: '2X' },
    });
    const [m, xx] = [bodyOf('M'), bodyOf('2X')];
    // a cropped body stays as cropped for the longer back
    expect(large.own.lengthMm).toBe(Math.round((480 * xx.napeToWaist) / m.napeToWaist));
    expect(large.own['neck.widthMm']).toBe(Math.round((150 * xx.crossBack) / m.crossBack));
    expect(large.own['hem.heightMm']).toBe(70);
    expect(large.own.silhouette).toBe('straight');
  });

  it('asks again about what was overruled for the other body', () => {
    expect(size('L').overruled).toEqual([]);
  });

  it('is wider by what the body is, and can be knitted', () => {
    const widths = ['S', 'L', '2X'].map((name) => {
      const made = given(draft(designOf(size(name))));
      const from = made.recipes[0]?.parts[0]?.from;
      return from && 'castOn' in from ? from.castOn : 0;
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
    expect(new Set(widths).size).toBe(3);
  });

  it('changes nothing of the first', () => {
    const before = JSON.stringify(first);
    size('2X');
    expect(JSON.stringify(first)).toBe(before);
  });
});
