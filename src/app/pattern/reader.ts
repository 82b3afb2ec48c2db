import { computed, signal } from '@preact/signals';
import { type ReadOptions, type ReadPattern, readPattern } from '../../knit/pattern/read-pattern.ts';
import { lastWriter } from '../editor/draft.ts';
import { readKept, textIn, type Unread } from '../kept/read-kept.ts';
import { readOr, store } from '../store.ts';
import { emptyDraft, type PatternDraft, wholeGauge, withCount, withLines } from './draft.ts';

/** The pattern that is being copied in; undefined until read from the store. */
export const pattern = signal<PatternDraft | undefined>(undefined);

/** what was left and cannot be read, and why */
export const unread = signal<Unread | undefined>(undefined);

/** what is read: a little behind the typing, so that every letter appears at once */
const settled = signal<PatternDraft | undefined>(undefined);

/** how the text is read for the size and gauge chosen */
export const options = computed<ReadOptions>(() => {
  const now = settled.value ?? emptyDraft;
  const gauge = wholeGauge(now.gauge);
  return { size: now.size, ...(gauge === undefined ? {} : { gauge }) };
});

export const read = computed<ReadPattern | undefined>(
  () => settled.value && readPattern(settled.value.text, options.value),
);

/** whether what was typed is on disk */
export const kept = signal<'kept' | 'keeping' | 'failed'>('kept');

const SETTING = 'pattern new';
const TYPING_PAUSE_MS = 180;

/** Reads the text that was left, or begins an empty one. */
export async function openPattern(): Promise<void> {
  if (pattern.value !== undefined) return;
  const settings = readOr(await (await store()).settings());
  if (settings === undefined) return;
  const stored = settings[SETTING];
  const draft = await readKept('patternDraft', stored);
  unread.value = draft.ok ? undefined : { fault: draft.faults[0], stored };
  if (!draft.ok) return;
  pattern.value ??= draft.value ?? emptyDraft;
  settle();
}

/** Begins anew where what was left cannot be read, with the name and the text of it. */
export function beginAnew(): void {
  const stored = unread.value?.stored;
  unread.value = undefined;
  pattern.value = { ...emptyDraft, name: textIn(stored, 'name'), text: textIn(stored, 'text') };
  change({});
  settle();
}

const write = lastWriter(
  async (value: PatternDraft | null) => (await (await store()).setSetting(SETTING, value)).ok,
);

let pause: ReturnType<typeof setTimeout> | undefined;

export function change(by: Partial<PatternDraft>): void {
  if (!pattern.value) return;
  pattern.value = { ...pattern.value, ...by };
  clearTimeout(pause);
  pause = setTimeout(settle, TYPING_PAUSE_MS);
  void keep(pattern.value);
}

/** Reads what is typed now, without waiting for a pause. */
export function settle(): void {
  clearTimeout(pause);
  settled.value = pattern.value;
}

async function keep(value: PatternDraft): Promise<void> {
  kept.value = 'keeping';
  kept.value = (await write(value)) ? 'kept' : 'failed';
}

export const changeLines = (first: number, last: number, instead: string): void =>
  change({ text: withLines(pattern.value?.text ?? '', first, last, instead) });

export function answerCount(line: number, stitches: number): void {
  change({ text: withCount(pattern.value?.text ?? '', line, stitches) });
  settle();
}

/** Begins again; what was typed is gone. */
export function startAgain(): void {
  change(emptyDraft);
  settle();
}

/** Forgets the text once its garment is made. */
export async function forgetPattern(): Promise<void> {
  clearTimeout(pause);
  await write(null);
  pattern.value = undefined;
  settled.value = undefined;
}
