import { type Fault, fault, ok, placed, type Result, refuse } from '../fault.ts';
import type { Said } from './count/advice.ts';
import { countAt } from './count/count-at.ts';
import { nextSide } from './count/observation.ts';
import type { PlannedPart } from './planned.ts';
import type { Edge, Recipe, Section } from './recipe.ts';
import { waysToAbsorb } from './rework/absorb.ts';
import { withRows } from './rework/lay-anew.ts';
import { byHeight, byMeasure } from './rework/length.ts';
import { deeperNeck } from './rework/neck.ts';
import { type Otherwise, workedOtherwise } from './rework/otherwise.ts';
import { put } from './rework/put.ts';
import { type Job, type Rework, replan } from './rework/replan.ts';
import { shoulderAnew } from './rework/shoulder-anew.ts';
import { splitAt } from './rework/split-at.ts';

/** What she wants of the rows not yet knitted. Sections count from 0 in the plan in hand. */
export type ReworkWish =
  /** the count on the needle stands as it is; the rest leads to the planned end all the same */
  | { readonly kind: 'accept'; readonly stitches: number; readonly missingAt?: Edge }
  /** so high measures what is knitted above row `above` (0: the part's start); the rest reaches the planned lengths */
  | { readonly kind: 'measured'; readonly heightMm: number; readonly above: number }
  /** the section shall have so many rows in all, those knitted among them */
  | { readonly kind: 'rows'; readonly section: number; readonly rows: number }
  /** the section's end shall lie so high above the part's start */
  | { readonly kind: 'height'; readonly section: number; readonly heightMm: number }
  /** what is left of the section is worked in another fabric, on another needle or shaped in another rhythm */
  | ({ readonly kind: 'section'; readonly section: number } & Otherwise)
  /** the neck begins so many rows earlier (> 0: deeper) or later */
  | { readonly kind: 'neck'; readonly rows: number }
  /** a shoulder in short rows that cannot be finished as it is planned is closed before it is bound off */
  | { readonly kind: 'shoulder' };

/**
 * Plans the rows not yet knitted anew.
 * @param recipe the make's recipe: its parts as they are planned now (`recipeOfMake`)
 * @param index of the part in hand
 * @param part its plan now
 * @param worked rows worked of it
 * @returns the new plans, proven by working them, or why the wish cannot be met: 'nothing left', 'shaping does not fit',
 *   'fewer rows than knitted', 'cannot be taken up', 'measure again', and the planner's own faults
 */
export function rework(
  recipe: Recipe,
  index: number,
  part: PlannedPart,
  worked: number,
  wish: ReworkWish,
): Result<Rework> {
  const base = part.recipe ?? recipe.parts[index];
  const where = { piece: recipe.name, part: part.name };
  const knitted = base?.sections.reduce((sum, section) => sum + section.rows, 0) ?? 0;
  if (!base || !Number.isSafeInteger(worked) || worked < 0 || worked >= knitted) {
    return refuse(fault('nothing left', {}, where));
  }
  const job: Job = { recipe, index, part, worked, base };
  const made = wishes(job, wish);
  return made.ok ? made : refuse(...made.faults.map((f) => placed(f, where)));
}

function wishes(job: Job, wish: ReworkWish): Result<Rework> {
  switch (wish.kind) {
    case 'accept':
      return acceptCount(job, wish.stitches, wish.missingAt);
    case 'measured':
      return withHeights(
        job,
        toRest(job, byMeasure(job, wish.heightMm, wish.above), { code: 'measured', figures: {} }),
      );
    case 'rows':
      return toRest(job, withSectionRows(job, wish.section, wish.rows), {
        code: 'rows',
        figures: { rows: wish.rows },
      });
    case 'height': {
      const rows = byHeight(job, wish.section, wish.heightMm);
      if (!rows.ok) return rows;
      return toRest(job, withSectionRows(job, wish.section, rows.value), {
        code: 'rows',
        figures: { rows: rows.value },
      });
    }
    case 'section':
      return toRest(job, otherwise(job, wish.section, wish), { code: 'section', figures: {} });
    case 'shoulder':
      return shoulderAnew(job);
    case 'neck': {
      const parts = deeperNeck(job, wish.rows);
      return parts.ok
        ? replan(job, parts.value, { code: 'neck', figures: { rows: Math.abs(wish.rows) } })
        : parts;
    }
  }
}

/** Rows are whole: says how high the part was to end, and how high it will. */
function withHeights({ part }: Job, made: Result<Rework>): Result<Rework> {
  if (!made.ok) return made;
  const top = (one: PlannedPart | undefined) => Math.round(one?.rows[one.rows.length - 1]?.height ?? 0);
  const figures = {
    ...made.value.how.figures,
    plannedMm: top(part),
    reachedMm: top(made.value.parts[0]?.part),
  };
  return ok({ ...made.value, how: { ...made.value.how, figures } });
}

/** Tries the ways in turn; the first that can be knitted and leads to the planned end is taken. */
function acceptCount(job: Job, stitches: number, missingAt: Edge | undefined): Result<Rework> {
  const { part, worked, base } = job;
  const off = stitches - (countAt(part, worked) ?? 0);
  const { rest } = splitAt(base, part, worked);
  if (off === 0) return toRest(job, ok(rest), { code: 'as planned', figures: {} });
  const faults: Fault[] = [];
  for (const way of waysToAbsorb(rest, off, missingAt, nextSide(part, worked))) {
    const [first, ...later] = way.rest;
    const counted = first ? [{ ...first, onNeedle: stitches }, ...later] : way.rest;
    const made = toRest(job, ok(counted), { ...way.how, figures: { ...way.how.figures, stitches } });
    if (made.ok && leftOf(made.value.parts[0]?.part) === leftOf(part)) return made;
    if (!made.ok) faults.push(...made.faults);
  }
  const offStitches = Math.abs(off);
  return refuse(fault('cannot be taken up', { offStitches }), ...faults.slice(0, 1));
}

/** Stitches before the part is bound off, held or shared. */
function leftOf(part: PlannedPart | undefined): number | undefined {
  const last = part?.rows[part.rows.length - 1];
  return last?.after === 0 ? last.before : last?.after;
}

/** The rest with what is left of one section worked otherwise. */
function otherwise(job: Job, section: number, wish: Otherwise): Result<readonly Section[]> {
  const { rest, at } = restFrom(job, section);
  const one = rest[at];
  if (!one) return refuse(fault('fewer rows than knitted', { rows: 0, workedRows: job.worked }));
  const made = workedOtherwise(one, wish);
  return made.ok ? ok(put(rest, at, made.value)) : made;
}

/** What is left, and where in it a section of the plan lies. */
function restFrom({ base, part, worked }: Job, section: number) {
  const { done, rest } = splitAt(base, part, worked);
  const isSplit = done.length + rest.length > base.sections.length;
  return { done, rest, isSplit, at: section - done.length + (isSplit ? 1 : 0) };
}

/** The rest with one section brought to `rows` rows in all. */
function withSectionRows(job: Job, section: number, rows: number): Result<readonly Section[]> {
  const { done, rest, isSplit, at } = restFrom(job, section);
  const one = rest[at];
  const before = isSplit && at === 0 ? (done[done.length - 1]?.rows ?? 0) : 0;
  if (!one || !Number.isSafeInteger(rows) || rows - before < 0) {
    return refuse(fault('fewer rows than knitted', { rows, workedRows: before }));
  }
  const made = withRows(one, rows - before);
  return made.ok ? ok(put(rest, at, made.value)) : made;
}

function toRest(job: Job, rest: Result<readonly Section[]>, how: Said): Result<Rework> {
  if (!rest.ok) return rest;
  const { done } = splitAt(job.base, job.part, job.worked);
  return replan(job, new Map([[job.index, { ...job.base, sections: [...done, ...rest.value] }]]), how);
}
