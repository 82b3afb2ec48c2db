import { computed, signal } from '@preact/signals';
import type { Unread } from '../../../knit/pattern/follow/build/notes.ts';
import type { ReadLine, ReadOptions } from '../../../knit/pattern/read-pattern.ts';
import type { Reading } from '../../../knit/pattern/readings.ts';
import { aloneOnLine, withLines } from '../../../knit/pattern/text/with-lines.ts';
import { type Asked, ask, only } from '../../off-thread/ask.ts';
import type { ReadText } from '../../off-thread/tasks.ts';
import { readOr, store } from '../../store.ts';
import type { Begun } from '../kept/begun.ts';
import { keptDraft } from '../kept/kept-draft.ts';
import { textIn } from '../kept/read-kept.ts';
import { emptyDraft, type OwnMend, type PatternDraft, wholeGauge, withCount, withMend } from './draft.ts';

/** The pattern that is being copied in; undefined until read from the store. */
export const pattern = signal<PatternDraft | undefined>(undefined);

const draftOf = keptDraft('patternDraft');
export const { unread, keeping: kept } = draftOf;

/** what is read: a little behind the typing, so that every letter appears at once */
const settled = signal<PatternDraft | undefined>(undefined);

/** how the text is read for the size and gauge chosen */
export const options = computed<ReadOptions>(() => {
  const now = settled.value ?? emptyDraft;
  const gauge = wholeGauge(now.gauge);
  return { size: now.size, ...(gauge === undefined ? {} : { gauge }) };
});

/** what was understood: of the text as it is now, or, while that is `reading`, as it was before */
export const read = signal<ReadText | undefined>(undefined);

/** 'stopped': she did not want to wait for the end of it */
export const reading = signal<'read' | 'reading' | 'stopped'>('read');

const SETTING = 'pattern new';
const TYPING_PAUSE_MS = 180;
/** most texts are read before this is said of them */
const SLOW_MS = 500;

/** Reads the text that was left, or begins an empty one. */
export async function openPattern(): Promise<void> {
  if (pattern.value !== undefined) return;
  const settings = readOr(await (await store()).settings());
  if (settings === undefined) return;
  const left = await draftOf.left(settings[SETTING]);
  if (left === undefined) return;
  pattern.value ??= left.draft ?? emptyDraft;
  void settle();
}

/** Begins anew where what was left cannot be read, with the name and the text of it. */
export function beginAnew(): void {
  const stored = draftOf.beginAnew();
  pattern.value = { ...emptyDraft, name: textIn(stored, 'name'), text: textIn(stored, 'text') };
  change({});
  void settle();
}

let pause: ReturnType<typeof setTimeout> | undefined;

export function change(by: Partial<PatternDraft>): void {
  if (!pattern.value) return;
  pattern.value = { ...pattern.value, ...by };
  clearTimeout(pause);
  pause = setTimeout(() => void settle(), TYPING_PAUSE_MS);
  void draftOf.keep(SETTING, pattern.value);
}

/** Reads what is typed now, without waiting for a pause; comes back when it is read, or she has stopped that. */
export async function settle(): Promise<void> {
  clearTimeout(pause);
  const isKnown = settled.value === pattern.value && reading.value !== 'stopped';
  settled.value = pattern.value;
  if (!isKnown) begun = readAside(pattern.value);
  await begun;
}

let asked: Asked<ReadText> | undefined;
let begun: Promise<void> = Promise.resolve();

/** Beside the page: a few words can ask for rows that take long to work. What is asked later ends what was asked before. */
async function readAside(now: PatternDraft | undefined): Promise<void> {
  asked?.stop();
  const mine = now && ask('pattern', now.text, options.value);
  asked = mine;
  const slow = setTimeout(() => (reading.value = 'reading'), SLOW_MS);
  const found = mine && (await only(mine));
  clearTimeout(slow);
  if (asked !== mine) return begun;
  if (mine === undefined) read.value = undefined;
  if (found?.ok) read.value = found.value;
  reading.value = mine && !found?.ok ? 'stopped' : 'read';
}

/** She does not wait for it any longer. */
export const stopReading = (): void => asked?.stop();

export const changeLines = (first: number, last: number, instead: string): void =>
  change({ text: withLines(pattern.value?.text ?? '', first, last, instead) });

export function answerCount(line: number, stitches: number): void {
  change({ text: withCount(pattern.value?.text ?? '', line, stitches) });
  void settle();
}

const alone = (line: ReadLine, one: Unread) => aloneOnLine(pattern.value?.text ?? '', one, line.lastLine);

/** The nearest readings of a sentence that was not understood; undefined where they cannot be worked out. */
export async function readingsOf(line: ReadLine, one: Unread): Promise<readonly Reading[] | undefined> {
  const its = alone(line, one);
  const found = await only(ask('readings', its.text, its.line, options.value));
  return found?.ok ? found.value : undefined;
}

/** The sentence said as a reading says it. */
export function takeReading(line: ReadLine, one: Unread, { text }: Reading): void {
  const its = alone(line, one);
  change({ text: withLines(its.text, its.line, its.lastLine, text) });
  void settle();
}

/** She says herself what a sentence is. */
export function mendSentence(line: ReadLine, one: Unread, mend: OwnMend): void {
  const its = alone(line, one);
  change({ text: withMend(its.text, its.lastLine, mend) });
  void settle();
}

/** Begins again; what was typed is gone. */
export function startAgain(): void {
  change(emptyDraft);
  void settle();
}

/**
 * Takes up a text that a garment was read from, to be read in another size. One is kept: another that is begun stays,
 * unless it shall be replaced.
 */
export async function readAgain(from: PatternDraft, replace: boolean): Promise<Begun> {
  await openPattern();
  const begun = pattern.value;
  if (begun === undefined) return 'not kept';
  if (!replace && begun.text.trim() !== '' && begun.text !== from.text) return 'another is begun';
  pattern.value = from;
  await draftOf.keep(SETTING, from);
  void settle();
  return kept.value === 'kept' ? 'taken' : 'not kept';
}

/** Forgets the text once its garment is made. */
export async function forgetPattern(): Promise<void> {
  clearTimeout(pause);
  await draftOf.write(SETTING, null);
  pattern.value = undefined;
  await settle();
}
