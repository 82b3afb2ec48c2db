import { type ArgsOf, type TaskName, tasks } from './tasks.ts';

/** The worker's side: one question at a time, asked by `./ask.ts`. A page that has no worker takes the tasks from here. */

declare global {
  /** where this file runs in the page itself: a worker's file may export nothing */
  var tasksHere: typeof tasks | undefined;
}

/** What the page asks. */
export interface Asking {
  readonly name: TaskName;
  readonly args: ArgsOf<TaskName>;
}

/** What it is answered: parts, then whether these are all. */
export type Answering = { readonly part: unknown } | { readonly done: boolean };

const { postMessage: answer } = globalThis as unknown as { postMessage(what: Answering): void };

async function work({ name, args }: Asking): Promise<void> {
  try {
    const task = tasks[name] as (...all: readonly unknown[]) => Iterable<unknown> | AsyncIterable<unknown>;
    for await (const part of task(...args)) answer({ part });
    answer({ done: true });
  } catch {
    answer({ done: false });
  }
}

if ('document' in globalThis) globalThis.tasksHere = tasks;
else addEventListener('message', (event: MessageEvent<Asking>) => void work(event.data));
