import { fault, ok, type Result, refuse } from '../../knit/fault.ts';
import { scriptUrl } from '../start/script-url.ts';
import type { ArgsOf, PartOf, TaskName, tasks as Tasks } from './tasks.ts';
import type { Answering, Asking } from './worker.ts';
import address from './worker.ts?worker&url';

/** Something that is being worked out beside the page, which answers taps meanwhile. */
export interface Asked<Part> {
  /** all parts in order; 'app-incomplete' where it could not be worked out at all; undefined where it was stopped */
  readonly parts: Promise<Result<readonly Part[]> | undefined>;
  /** ends the work at once, however deep in it the worker is */
  readonly stop: () => void;
}

/** A worker that has answered waits for the next question: beginning one costs more than most answers. */
let idle: Worker | undefined;

/** Has a task worked out by a worker; by the page itself where no worker can be had. */
export function ask<K extends TaskName>(name: K, ...args: ArgsOf<K>): Asked<PartOf<K>> {
  type Answer = Result<readonly PartOf<K>[]> | undefined;
  let worker = typeof Worker === 'function' ? takeWorker() : undefined;
  const { promise, resolve } = withResolver<Answer>();
  const found: PartOf<K>[] = [];
  const end = (answer: Answer, what: 'keep' | 'terminate') => {
    if (worker && what === 'keep' && idle === undefined) idle = worker;
    else worker?.terminate();
    worker = undefined;
    resolve(answer);
  };
  const here = () =>
    askHere(name, args).then(
      (parts) => end(ok(parts), 'keep'),
      () => end(refuse(fault('app-incomplete')), 'keep'),
    );
  if (worker === undefined) void here();
  else {
    worker.onmessage = ({ data }: MessageEvent<Answering>) => {
      if ('part' in data) found.push(data.part as PartOf<K>);
      else end(data.done ? ok(found) : refuse(fault('app-incomplete')), 'keep');
    };
    // its file is not to be had, or the browser does not run it
    worker.onerror = (event) => {
      event.preventDefault();
      worker?.terminate();
      worker = undefined;
      void here();
    };
    worker.postMessage({ name, args } satisfies Asking);
  }
  return { parts: promise, stop: () => end(undefined, 'terminate') };
}

/** The one answer of a task that has one part; undefined where it was stopped. */
export async function only<T>({ parts }: Asked<T>): Promise<Result<T> | undefined> {
  const answer = await parts;
  return answer?.ok ? ok(answer.value[0] as T) : answer;
}

function takeWorker(): Worker {
  const free = idle ?? new Worker(scriptUrl(address), { type: 'module' });
  idle = undefined;
  return free;
}

function withResolver<T>() {
  let resolve: (value: T) => void = () => undefined;
  const promise = new Promise<T>((given) => {
    resolve = given;
  });
  return { promise, resolve };
}

/** From the worker's own file: what it works by is on this device once, not once for it and once for the page. */
async function tasksOfWorker(): Promise<typeof Tasks> {
  if (globalThis.tasksHere === undefined) {
    await import(/* @vite-ignore */ new URL(address, document.baseURI).href).catch(() => {
      // as Vite says it of every other file that does not load: what is kept is mended
      dispatchEvent(new Event('vite:preloadError', { cancelable: true }));
    });
  }
  if (globalThis.tasksHere === undefined) throw new Error('The file of the worker is not to be had.');
  return globalThis.tasksHere;
}

async function askHere<K extends TaskName>(name: K, args: ArgsOf<K>): Promise<readonly PartOf<K>[]> {
  const tasks = await tasksOfWorker();
  const task = tasks[name] as unknown as (
    ...all: readonly unknown[]
  ) => Iterable<PartOf<K>> | AsyncIterable<PartOf<K>>;
  const found: PartOf<K>[] = [];
  for await (const part of task(...args)) found.push(part);
  return found;
}
