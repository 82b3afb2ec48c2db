import { figureAt } from '../../../knit/garment/adjust.ts';
import { resized } from '../../../knit/garment/grade.ts';
import { type DesignForm, designOf, type Figure } from './form.ts';

/**
 * The same design for another body: choices, swatches and borders are taken over, lengths that she had set move with the
 * measure that drives them, warnings that she had overruled are asked again.
 */
export function inAnotherSize(
  form: DesignForm,
  { person, body, name }: Pick<DesignForm, 'person' | 'body' | 'name'>,
): DesignForm {
  const made = resized(designOf(form), body);
  const own = Object.entries(form.own).map(([path, value]): [string, string | Figure] => [
    path,
    typeof value === 'number' ? (figureAt(made, path) ?? value) : value,
  ]);
  return { ...form, name, person, body, own: Object.fromEntries(own), overruled: [] };
}
