import { dirname } from 'node:path';
import { BroadcastChannel } from 'node:worker_threads';
import { vi } from 'vitest';
import { channel, type Now } from './looker.ts';
import type { Fate, Step, Trial } from './orders.ts';
import { spent } from './spent.ts';
import type { TestFile, Written } from './stand-in.ts';
import { makeReady, read, workOne } from './work.ts';

declare global {
  /** the number of the mutant that is alive, 0 for none */
  var __mutant: number;
}

/**
 * What a mutant may take of the processor, ms: with the tests for which it is switched on, and again with those that are
 * read anew. One that is not found by then is tried once more, when all have been, for longer; then it survives.
 */
const CAP = 10_000;
const LONGER = 40_000;
const LATE: Fate = { killed: false, why: 'not found within the cap', late: true };
const NEVER: Fate = { killed: false, why: 'not found within the longer cap' };
/** A mutant may never end: a test is given so many times what it took, and this much, ms. */
const PATIENCE = 10;
const START = 5_000;
/** What is done once for a group, or the reading of a file, may take this much, ms. */
const READY = 60_000;

const looker = new BroadcastChannel(channel);
const files = new Map<string, TestFile>();
/** Tests that turned red without any mutant when they were worked again: they prove nothing. */
const unsteady = new Set<string>();
/** Which tests have found a mutant of a source, or of its folder: they are tried first for the next one. */
const finders = new Map<string, Step[]>();
/** So many of them. */
const FIRST = 8;
/** One that takes longer, ms, waits for its turn: a slow law that found one would use up the time of all others. */
const QUICK = 500;

const nameOf = ({ file, test }: Step): string => `${file} ${test}`;
const limitOf = ({ ms }: Step): number => START + PATIENCE * ms;

export class Tries {
  /** spent on reading files, which is no work of a test, ms */
  #reading = 0;

  readonly #cap: number;
  readonly #late: Fate;

  constructor(
    readonly root: string,
    longer: boolean,
  ) {
    this.#cap = longer ? LONGER : CAP;
    this.#late = longer ? NEVER : LATE;
  }

  #worked = (): number => spent() - this.#reading;

  /** The tests for which the mutant is only switched on, quick ones first, to the first red one. */
  async switched({ id, source, steps, fresh }: Trial): Promise<Fate | undefined> {
    const places = [source, dirname(source)];
    const known = new Set(places.flatMap((place) => finders.get(place) ?? []).map(nameOf));
    const first = steps.filter((step) => step.ms <= QUICK && known.has(nameOf(step)));
    const began = this.#worked();
    for (const step of [...first, ...steps.filter((one) => !first.includes(one))]) {
      if (this.#worked() - began > this.#cap) return fresh.length > 0 ? undefined : this.#late;
      if (unsteady.has(nameOf(step))) continue;
      const by = await this.#turnsRed(id, step);
      if (by === undefined) continue;
      for (const place of places) {
        const others = (finders.get(place) ?? []).filter((one) => nameOf(one) !== nameOf(step));
        finders.set(place, [step, ...others].slice(0, FIRST));
      }
      return { killed: true, by };
    }
    return undefined;
  }

  /** The files that are read anew with the mutant in what they read, and their tests, to the first red one. */
  async readAnew({ id, fresh }: Trial): Promise<Fate | undefined> {
    const began = this.#worked();
    this.#startAfresh();
    for (const { file, steps } of fresh) {
      const red = await this.#firstRed(id, file, steps, began);
      if (red === 'cap') return this.#late;
      if (red === undefined) continue;
      this.#startAfresh();
      const again = await this.#firstRed(0, file, red.step === undefined ? [] : [red.step], this.#worked());
      if (again === undefined) return { killed: true, by: red.by };
      this.#startAfresh();
    }
    return undefined;
  }

  async #turnsRed(id: number, step: Step): Promise<string | undefined> {
    const test = await this.#testOf(step);
    if (test === undefined) return undefined;
    const red = await this.#work(id, test, step);
    if (red === undefined) return undefined;
    // what went wrong beside the test may be left from the mutant before
    if (red.startsWith('outside') && (await this.#work(id, test, step)) === undefined) return undefined;
    // what is still under way would meet the next test
    if (red.startsWith('not done')) this.#startAfresh();
    const sound = await this.#testOf(step);
    if (sound !== undefined && (await this.#work(0, sound, step)) === undefined)
      return `${step.file}: ${test.name}`;
    this.#startAfresh();
    const anew = await this.#firstRed(id, step.file, [step], this.#worked());
    this.#startAfresh();
    if (anew === undefined || anew === 'cap') return undefined;
    const without = await this.#firstRed(0, step.file, [step], this.#worked());
    this.#startAfresh();
    if (without === undefined) return anew.by;
    unsteady.add(nameOf(step));
    return undefined;
  }

  /** Reads a file and works the given tests of it, with the mutant alive from the first line on. */
  async #firstRed(
    id: number,
    file: string,
    steps: readonly Step[],
    began: number,
  ): Promise<{ by: string; step?: Step } | 'cap' | undefined> {
    this.#say({ id, what: `${file} is read`, ms: READY });
    globalThis.__mutant = id;
    try {
      const reading = spent();
      const { tests } = await read(`${this.root}/${file}`);
      this.#reading += spent() - reading;
      for (const step of steps) {
        if (this.#worked() - began > this.#cap) return 'cap';
        const test = tests[step.test];
        // one that is not written any more is red in no runner
        if (test === undefined) continue;
        if ((await this.#worksAnew(id, file, test, step)) === false)
          return { by: `${file}: ${test.name}`, step };
      }
      return undefined;
    } catch {
      return { by: `${file}: cannot be read` };
    } finally {
      globalThis.__mutant = 0;
    }
  }

  /** What is made ready for a whole group may take far longer than the test itself. */
  async #worksAnew(id: number, file: string, test: Written, step: Step): Promise<boolean> {
    this.#say({ id, what: `${file}: what its tests need`, ms: READY });
    try {
      await makeReady(test.group);
    } catch {
      return false;
    }
    this.#say({ id, what: `${file}: ${test.name}`, ms: limitOf(step) });
    return (await workOne(test, limitOf(step))) === undefined;
  }

  async #testOf({ file, test }: Step): Promise<Written | undefined> {
    let found = files.get(file);
    if (found === undefined) {
      this.#say({ id: 0, what: `${file} is read`, ms: READY });
      const began = spent();
      found = await read(`${this.root}/${file}`);
      this.#reading += spent() - began;
      files.set(file, found);
    }
    const written = found.tests[test];
    if (written !== undefined) await makeReady(written.group);
    return written;
  }

  async #work(id: number, test: Written, step: Step): Promise<string | undefined> {
    this.#say({ id, what: `${step.file}: ${test.name}`, ms: limitOf(step) });
    globalThis.__mutant = id;
    const red = await workOne(test, limitOf(step));
    globalThis.__mutant = 0;
    return red;
  }

  #startAfresh(): void {
    vi.resetModules();
    files.clear();
  }

  #say(now: Now): void {
    looker.postMessage(now);
  }
}
