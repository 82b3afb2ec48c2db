import { batch, computed, signal } from '@preact/signals';
import type { Result } from '../../../knit/fault.ts';
import type { Body } from '../../../knit/garment/design.ts';
import { type Draft, draft, draftInSteps } from '../../../knit/garment/draft.ts';
import { nextTask } from '../../../pace/next-task.ts';
import { readOr, store } from '../../store.ts';
import type { Begun } from '../kept/begun.ts';
import { keptDraft } from '../kept/kept-draft.ts';
import { readKept, textIn } from '../kept/read-kept.ts';
import { type DesignForm, designOf, type Figure, newForm, type Person } from './form.ts';

/** The garment that is being designed; undefined until read. */
export const form = signal<DesignForm | undefined>(undefined);

const draftOf = keptDraft('designForm');
export const { unread, keeping: kept } = draftOf;

/** people whose measures are kept, by name */
export const people = signal<readonly Person[]>([]);

/** What was opened, and its draft: undefined while that comes in steps. */
const opened = signal<{ readonly form: DesignForm; readonly made: Result<Draft> | undefined } | undefined>(
  undefined,
);

export const design = computed(() => form.value && designOf(form.value));

/** The draft, anew with every figure; undefined until there is one. */
export const drafted = computed<Result<Draft> | undefined>(() => {
  if (form.value !== undefined && form.value === opened.value?.form) return opened.value.made;
  return design.value && draft(design.value);
});

const FORM = 'design new';
const PEOPLE = 'people';

/** Reads the design that was left, or begins one. */
export async function openDesign(): Promise<void> {
  const settings = readOr(await (await store()).settings());
  if (settings === undefined) return;
  people.value = await readPeople(settings[PEOPLE]);
  const left = await draftOf.left(settings[FORM]);
  if (!left || form.value !== undefined) return;
  await begin(left.draft ?? newForm());
}

/**
 * The first draft of a visit takes a slow phone so long that a finger would be felt to wait: it comes in steps, each in a
 * task of its own. What is typed meanwhile is drafted at once, and the steps are left.
 */
async function begin(left: DesignForm): Promise<void> {
  batch(() => {
    form.value = left;
    opened.value = { form: left, made: undefined };
  });
  const steps = draftInSteps(designOf(left));
  let step: IteratorResult<void, Result<Draft>>;
  do {
    await nextTask();
    if (form.peek() !== left) return;
    step = steps.next();
  } while (step.done !== true);
  // and so is what is drawn of it
  await nextTask();
  if (form.peek() === left) opened.value = { form: left, made: step.value };
}

/** Begins anew where what was left cannot be read, with its name. */
export function beginAnew(): void {
  const name = textIn(draftOf.beginAnew(), 'name');
  form.value = { ...newForm(), name };
  void keep();
}

/**
 * Takes up the figures that a garment was designed from, to change them and draft anew. One design is kept in the
 * making: another that is begun stays, unless it shall be replaced.
 */
export async function designFrom(figures: DesignForm, replace: boolean): Promise<Begun> {
  await openDesign();
  if (form.value === undefined) return 'not kept';
  const begun = JSON.stringify(form.value);
  if (!replace && ![newForm(), figures].some((one) => JSON.stringify(one) === begun))
    return 'another is begun';
  form.value = figures;
  await keep();
  return kept.value === 'kept' ? 'taken' : 'not kept';
}

/** Those whose measures are kept, without opening a design. */
export async function keptPeople(): Promise<readonly Person[]> {
  const settings = readOr(await (await store()).settings());
  return readPeople(settings?.[PEOPLE]);
}

async function readPeople(stored: unknown): Promise<readonly Person[]> {
  if (!Array.isArray(stored)) return [];
  const read = await Promise.all(stored.map((one: unknown) => readKept('person', one)));
  return read.flatMap((one) => (one.ok && one.value ? [one.value] : []));
}

export function change(by: (old: DesignForm) => DesignForm): void {
  if (!form.value) return;
  form.value = by(form.value);
  void keep();
}

async function keep(): Promise<void> {
  if (form.value) await draftOf.keep(FORM, form.value);
}

/** A figure or choice of the design, by its path. */
export const setOwn = (path: string, value: string | Figure): void =>
  change((old) => ({ ...old, own: { ...old.own, [path]: value } }));

export const setMeasure = (name: keyof Body, mm: Figure): void =>
  change((old) => ({ ...old, person: {}, body: { ...old.body, [name]: mm ?? Number.NaN } }));

export const overrule = (code: string, on: boolean): void =>
  change((old) => ({
    ...old,
    overruled: on ? [...new Set([...old.overruled, code])] : old.overruled.filter((known) => known !== code),
  }));

/** Begins again; what was typed is gone. */
export const startAgain = (): void => change(newForm);

/** Forgets the design once its garment is made. */
export async function forgetDesign(): Promise<void> {
  await draftOf.write(FORM, null);
  form.value = undefined;
}

/** Keeps the measures of the form under a name; the same name is overwritten. */
export async function keepPerson(name: string): Promise<boolean> {
  const now = form.value;
  if (!now) return false;
  const list = [...people.value.filter((one) => one.name !== name), { name, body: now.body }];
  return writePeople(list, { name });
}

export const forgetPerson = (name: string): Promise<boolean> =>
  writePeople(
    people.value.filter((one) => one.name !== name),
    {},
  );

async function writePeople(list: readonly Person[], person: DesignForm['person']): Promise<boolean> {
  const written = await (await store()).setSetting(PEOPLE, list);
  if (readOr(written) === undefined && !written.ok) return false;
  people.value = list;
  change((old) => ({ ...old, person }));
  return true;
}
