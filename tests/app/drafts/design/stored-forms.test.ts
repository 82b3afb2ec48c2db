import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type DesignForm, designOf, type Figure, newForm } from '../../../../src/app/drafts/design/form.ts';
import { whole } from '../../../../src/app/drafts/kept/kept-shapes.ts';
import type { Design } from '../../../../src/knit/garment/design.ts';
import { draft } from '../../../../src/knit/garment/draft.ts';
import { told } from '../../../told.ts';

/** Forms as each version of them was stored, with the design that followed from it then. */
const golden = JSON.parse(
  readFileSync(new URL('../golden/forms.json', import.meta.url), 'utf8'),
) as readonly {
  readonly what: string;
  readonly form: DesignForm;
  readonly design: Design;
}[];

/** The same of versions 4 to 6, shallow V necks among them, with a hash of the recipes and joints that were made then. */
const later = JSON.parse(
  readFileSync(new URL('../golden/forms-4-to-6.json', import.meta.url), 'utf8'),
) as readonly ((typeof golden)[number] & { readonly made: string })[];

const recipesOf = (design: Design): string => {
  const made = draft(design);
  if (!made.ok) throw new Error(told(made.faults));
  return JSON.stringify(made.value.recipes);
};

/** What only a form of its version begins with, and no field types: these are no choices of the design that it is compared with. */
const UNTYPED = ['kind', 'armhole', 'body', 'gauges', 'needles', 'fabric', 'overruled', 'seamStitch'];

/** Every figure and choice of a design, as she would type it into a form. */
const typedOut = (design: Design): Record<string, string | Figure> =>
  Object.fromEntries(
    Object.entries(design)
      .filter(([name]) => !UNTYPED.includes(name))
      .flatMap(([name, value]) =>
        typeof value === 'object'
          ? Object.entries(value as object).map(
              ([inner, own]) => [`${name}.${inner}`, own as Figure] as const,
            )
          : [[name, value as string | Figure] as const],
      ),
  );

describe('forms that were stored by older versions', () => {
  it.each(golden)('are read, and what they design stays to the last figure: $what', ({ form, design }) => {
    expect(whole('designForm', form)).toEqual(form);
    expect(JSON.stringify(designOf(form))).toBe(JSON.stringify(design));
  });

  it.each(later)('design what they did, byte for byte: $what', ({ form, design, made }) => {
    expect(whole('designForm', form)).toEqual(form);
    expect(JSON.stringify(designOf(form))).toBe(JSON.stringify(design));
    const drafted = draft(designOf(form));
    if (!drafted.ok) throw new Error(told(drafted.faults));
    const { recipes, joints } = drafted.value;
    const now = createHash('sha256')
      .update(JSON.stringify([recipes, joints]))
      .digest('hex');
    expect(now.slice(0, 24)).toBe(made);
  });

  const typeable = golden.filter(({ design }) => design.armhole !== 'set-in' && design.kind === 'pullover');

  it.each(typeable)(
    'the same figures typed into a form of now make the same recipes, byte for byte: $what',
    ({ form, design }) => {
      const now: DesignForm = { ...form, version: newForm().version, own: typedOut(design) };
      const { seamStitch = false, needles, sleeve } = design;
      // the rules that it is drafted by are the form's, not hers
      const { edition: _now, ...asThen } = designOf(now);
      expect(recipesOf({ ...asThen, needles, seamStitch, sleeve })).toBe(recipesOf(designOf(form)));
    },
  );

  it('turns of short rows were left to her until a way of turning could be chosen', () => {
    const own = { shoulder: 'short rows' };
    const waysIn = (version: DesignForm['version']) =>
      new Set(recipesOf(designOf({ ...newForm(), version, own })).match(/"way":"[a-z ]+"/g));
    expect(waysIn(4)).toEqual(new Set());
    expect(waysIn(5)).toEqual(new Set(['"way":"wrapped"']));
  });

  it('they differ from what a form of now begins with', () => {
    const [first] = golden;
    expect(first?.form.version).toBe(1);
    expect(typeable.length).toBe(9);
    const old = golden.filter(({ form }) => form.version < 3);
    const begun = old.filter(
      ({ form, design }) =>
        recipesOf(designOf({ ...form, version: newForm().version })) !== recipesOf(design),
    );
    expect(begun.length).toBeGreaterThan(6);
  });
});
