import { type Fault, ok, type Result, refuse } from '../../../knit/fault.ts';
import { type Adjustment, adjustablePaths, adjusted, figureAt } from '../../../knit/garment/adjust.ts';
import type { Body, Design } from '../../../knit/garment/design.ts';
import { type Draft, draft } from '../../../knit/garment/draft.ts';
import { resized } from '../../../knit/garment/grade.ts';
import type { Recipe } from '../../../knit/piece/recipe.ts';
import { stableJson } from '../../../store/backup/stable.ts';
import { type DesignForm, designOf, type Figure, type SwatchForm } from './form.ts';

/** Whose size another's design is drafted in, with whose swatch. */
export interface Fitting {
  readonly person: DesignForm['person'];
  readonly body: Body;
  /** stitches and rows that she counted over so many mm, of the panels' own fabric; its maker's where it is left out */
  readonly swatch?: { readonly stitches: Figure; readonly rows: Figure; readonly overMm: number };
}

/** A design drafted again, with what its maker had set by hand. */
export interface DraftedAgain {
  readonly draft: Draft;
  /** of which the same is drafted by its owner from now on */
  readonly form: DesignForm;
  readonly kept: readonly Adjustment[];
  /** what cannot be kept in this size */
  readonly dropped: readonly Adjustment[];
}

/**
 * Another's design by the same rules for a body and a swatch. What its maker set for this size or for all is kept as long
 * as it can be knitted, one figure given back after the other.
 * @returns the faults of the draft where none of them is to blame
 */
export function draftAgain(
  form: DesignForm,
  adjustments: readonly Adjustment[],
  fitting: Fitting,
): Result<DraftedAgain> {
  const hers = fitting.swatch ? withSwatch(form, fitting.swatch) : form;
  const design = resized(designOf(hers), fitting.body);
  const size = fitting.person.size ?? '';
  let kept: readonly Adjustment[] = adjustments.filter((one) => one.size === undefined || one.size === size);
  const all = kept;
  for (;;) {
    const wished = adjusted(design, kept, size);
    const made = draft(wished);
    if (made.ok)
      return ok({
        draft: made.value,
        form: typedOut({ ...hers, person: fitting.person, body: fitting.body }, wished),
        kept,
        dropped: all.filter((one) => !kept.includes(one)),
      });
    if (kept.length === 0) return refuse(...made.faults);
    kept = without(kept, made.faults);
  }
}

/** The figures that her maker typed into the form itself move with the body; as they came out. */
export const setByHand = (form: DesignForm, design: Design): readonly Adjustment[] =>
  adjustablePaths.flatMap((path) => {
    const mm = figureAt(design, path);
    return typeof form.own[path] === 'number' && mm !== undefined ? [{ path, mm }] : [];
  });

/** Without the figure that a fault names; where none does, without the one set last. */
function without(kept: readonly Adjustment[], faults: readonly Fault[]): readonly Adjustment[] {
  const named = kept.find(({ path }) => faults.some(({ at }) => at.field === path)) ?? kept.at(-1);
  return kept.filter((one) => one !== named);
}

function withSwatch(
  form: DesignForm,
  { stitches, rows, overMm }: NonNullable<Fitting['swatch']>,
): DesignForm {
  const hers = (swatch: SwatchForm): SwatchForm =>
    swatch.fabric === form.fabric
      ? {
          fabric: swatch.fabric,
          needle: swatch.needle,
          stitches,
          rows,
          widthMm: overMm,
          heightMm: overMm,
          inRidges: false,
        }
      : swatch;
  return { ...form, swatches: form.swatches.map(hers) };
}

/** What a form has fields of its own for. */
const notTyped = ['kind', 'armhole', 'body', 'gauges', 'needles', 'fabric', 'overruled'];

/** The form that such a design follows from: whatever its rules would have otherwise stands in it as typed. */
function typedOut(form: DesignForm, design: Design): DesignForm {
  const ruled = designOf({ ...form, own: {} });
  const own: Record<string, string | Figure> = {};
  for (const [name, value] of Object.entries(design)) {
    if (notTyped.includes(name)) continue;
    const rule: unknown = ruled[name as keyof Design];
    if (typeof value !== 'object') put(own, name, value, rule);
    else
      for (const [inner, figure] of Object.entries(value as object))
        put(own, `${name}.${inner}`, figure, (rule as Readonly<Record<string, unknown>>)[inner]);
  }
  // what the rules of another body would add, as it is said where there is none
  if (ruled.frontBand.holesIn !== undefined)
    own['frontBand.holesIn'] = design.frontBand.holesIn ?? 'right front';
  if (ruled.neck.opening !== undefined) own['neck.opening'] = design.neck.opening ?? 'none';
  return { ...form, own };
}

function put(own: Record<string, string | Figure>, path: string, value: unknown, rule: unknown): void {
  if (value === rule) return;
  if (typeof value === 'boolean') {
    if (path === 'seamStitch') own[path] = value ? 'seam stitch' : 'no seam stitch';
  } else own[path] = value as string | Figure;
}

/** Whether pieces are knitted as a design has them, whatever they are called: a piece changed by hand is not in it. */
export const isAsDrafted = (pieces: readonly Recipe[], { recipes }: Draft): boolean =>
  bare(pieces) === bare(recipes);

const named = new Set(['name', 'part', 'along', 'piece']);
const bare = (recipes: readonly Recipe[]): string =>
  stableJson(
    JSON.parse(JSON.stringify(recipes, (key, value: unknown) => (named.has(key) ? undefined : value))),
  );
