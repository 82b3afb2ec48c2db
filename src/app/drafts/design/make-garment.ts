import { fault, type Result, refuse } from '../../../knit/fault.ts';
import type { Draft } from '../../../knit/garment/draft.ts';
import type { Joint } from '../../../knit/making-up/joint.ts';
import { jointCalled } from '../../../knit/making-up/joint-called.ts';
import type { Garment } from '../../../knit/piece/garment.ts';
import type { Recipe, Section } from '../../../knit/piece/recipe.ts';
import { planRecords } from '../../garments/plan-records.ts';
import { numbered, saveNew } from '../../garments/save-new.ts';
import { drafted, forgetDesign, form } from './designer.ts';
import { readSwatch } from './form.ts';

/** A name of the draft (a piece, a part, a section, an edge) in the knitter's language. */
export type NameInWords = (name: string) => string;

/** Makes the garment: its recipes, every row of them, its swatches and what it was designed from. Gives its id. */
export async function makeGarment(
  fallbackName: string,
  word: NameInWords,
  now = Date.now(),
): Promise<Result<string>> {
  const made = drafted.peek();
  const from = form.peek();
  if (!made || !from) return refuse(fault('nothing to save'));
  if (!made.ok) return made;
  const { pieces, joints } = draftInWords(made.value, word);
  const saved = await saveNew(
    {
      name: from.name.trim() || fallbackName,
      pieces: numbered(pieces),
      swatches: from.swatches.flatMap((swatch) => readSwatch(swatch) ?? []),
      design: from,
      joints,
    },
    now,
    planRecords,
  );
  if (saved.ok) await forgetDesign();
  return saved;
}

/** What was drafted, with every name in words. */
export const draftInWords = (
  { recipes, joints }: Draft,
  word: NameInWords,
): Pick<Garment, 'pieces' | 'joints'> & {
  readonly joints: readonly Joint[];
} => ({
  pieces: recipes.map((recipe) => inWords(recipe, word)),
  joints: joints.map((joint) => jointCalled(joint, { piece: word, part: word, section: word })),
});

/** The recipe with every name in words; parts are still found by the name that they now have. */
export function inWords(recipe: Recipe, word: NameInWords): Recipe {
  const section = (s: Section): Section => ({ ...s, name: word(s.name) });
  return {
    ...recipe,
    name: word(recipe.name),
    parts: recipe.parts.map((part) => ({
      ...part,
      name: word(part.name),
      from: fromInWords(part.from, word),
      sections: part.sections.map(section),
    })),
  };
}

function fromInWords(
  from: Recipe['parts'][number]['from'],
  word: NameInWords,
): Recipe['parts'][number]['from'] {
  if ('castOn' in from) return from;
  if ('part' in from) return { ...from, part: word(from.part) };
  return { pickUp: from.pickUp.map((edge) => ({ ...edge, along: word(edge.along) })) };
}
