import type { Fault } from '../../fault.ts';
import { counts, type PartCount } from '../counts.ts';
import { plan } from '../plan.ts';
import type { Plan } from '../planned.ts';
import type { Recipe } from '../recipe.ts';
import { workBudget } from '../work-budget.ts';
import type { PieceForm, SectionForm, ShapingForm } from './form.ts';
import { readPiece } from './read-piece.ts';

/** A fault and the field of the form at which it is to be said. */
export interface FormFault {
  readonly fault: Fault;
  readonly part?: number;
  readonly section?: number;
  /** 'name', 'rows', 'shaping 2', 'shaping 2 first' ...; the shaping's number is that of the form's entry */
  readonly field?: string;
}

export interface PieceSums {
  readonly recipe: Recipe;
  readonly counts: readonly PartCount[];
  /** fields that cannot be read */
  readonly faults: readonly FormFault[];
}

export interface PieceCheck extends PieceSums {
  /** present when there is no fault */
  readonly plan?: Plan;
}

/** Counts and unreadable fields: quick enough for every keystroke. */
export function sumPiece(form: PieceForm): PieceSums {
  const { recipe, faults } = readPiece(form);
  return { recipe, counts: counts(recipe, faults), faults: faults.map((found) => inForm(found, form)) };
}

/** What is planned anew with every letter typed, in stitches: the rows of ten pullovers, a blanket of 1000 on 900 rows. */
const MOST_STITCHES_TYPED = 1_000_000;

/** Everything that can be said of a form; its recipe is spelled out only when every field can be read. */
export function checkPiece(form: PieceForm, sums: PieceSums = sumPiece(form)): PieceCheck {
  if (sums.faults.length > 0) return sums;
  const planned = plan(sums.recipe, workBudget(MOST_STITCHES_TYPED));
  if (planned.ok) return { ...sums, plan: planned.value };
  return { ...sums, faults: planned.faults.map((found) => inRecipe(found, form, sums.recipe)) };
}

/** A fault found while reading speaks of the form's own fields. */
function inForm(fault: Fault, form: PieceForm): FormFault {
  const { part, sectionIndex, field } = fault.at;
  // of two parts with one name, the later one is to be renamed
  const matches = form.parts.flatMap((p, i) => (p.name === part ? [i] : []));
  const found = fault.code === 'part name twice' ? matches.at(-1) : matches[0];
  return {
    fault,
    ...(found === undefined ? {} : { part: found }),
    ...(sectionIndex === undefined ? {} : { section: sectionIndex }),
    ...(field === undefined ? {} : { field }),
  };
}

/** A fault of the plan speaks of the recipe's shapings, or of a row only. */
function inRecipe(fault: Fault, form: PieceForm, recipe: Recipe): FormFault {
  const placed = inForm(fault, form);
  const { part, section } = placed;
  if (part === undefined || section === undefined) return placed;
  const sectionForm = form.parts[part]?.sections[section];
  if (sectionForm === undefined) return placed;
  const entry =
    shapingNumber(fault.at.field) !== undefined
      ? entryOf(shapingNumber(fault.at.field) as number, sectionForm)
      : fault.at.field === undefined && fault.at.row !== undefined
        ? entryOfRow(fault, recipe, part, section, sectionForm)
        : undefined;
  if (entry !== undefined) return { ...placed, field: `shaping ${entry + 1}` };
  return fault.at.field === undefined ? { ...placed, field: 'rows' } : placed;
}

function shapingNumber(field: string | undefined): number | undefined {
  const number = /^shaping (\d+)$/.exec(field ?? '')?.[1];
  return number === undefined ? undefined : Number(number);
}

/** Groups at both edges are one entry of the form and two of the recipe. */
const shapingsOf = (entry: ShapingForm): number => ('groups' in entry && entry.edge === 'both' ? 2 : 1);

/** Index of the form's entry that the recipe's n-th shaping (from 1) comes from. */
function entryOf(number: number, section: SectionForm): number | undefined {
  let last = 0;
  const index = section.shaping.findIndex((entry) => {
    last += shapingsOf(entry);
    return number <= last;
  });
  return index < 0 ? undefined : index;
}

/** The last entry that has to do with the fault's row; where the fault is about groups, the last group. */
function entryOfRow(
  fault: Fault,
  recipe: Recipe,
  part: number,
  section: number,
  form: SectionForm,
): number | undefined {
  const list = recipe.parts[part]?.sections[section]?.shaping ?? [];
  const touching = list
    .map((shaping, i) => ({ shaping, number: i + 1 }))
    .filter(({ shaping }) => fault.code !== 'group on the wrong side' || 'groups' in shaping)
    .filter(({ shaping }) => {
      if ('groups' in shaping) return shaping.groups.some((group) => group.row === fault.at.row);
      return 'rows' in shaping ? shaping.rows.includes(fault.at.row ?? 0) : shaping.row === fault.at.row;
    });
  const last = touching.at(-1);
  return last === undefined ? undefined : entryOf(last.number, form);
}
