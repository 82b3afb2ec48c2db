import { vi } from 'vitest';
import { tasks } from '../../../src/app/off-thread/tasks.ts';
import type { Asking } from '../../../src/app/off-thread/worker.ts';

/** What a worker of the tests does when it is asked. */
export type Manner = 'answers' | 'is deep in work' | 'cannot be fetched';

/** Workers in the place of the browser's: what they answer is copied as a browser copies it. */
export function withWorkers(manner: { now: Manner }) {
  const made: { ended: boolean }[] = [];
  class FakeWorker {
    ended = false;
    onmessage: (event: { data: unknown }) => void = () => undefined;
    onerror: (event: { preventDefault(): void }) => void = () => undefined;
    constructor() {
      made.push(this);
    }
    postMessage(asking: Asking): void {
      if (manner.now === 'cannot be fetched')
        setTimeout(() => this.onerror({ preventDefault: () => undefined }));
      if (manner.now === 'answers') void this.work(structuredClone(asking));
    }
    async work({ name, args }: Asking): Promise<void> {
      const task = tasks[name] as (...all: readonly unknown[]) => AsyncIterable<unknown>;
      for await (const part of task(...args)) this.say({ part });
      this.say({ done: true });
    }
    say(what: object): void {
      if (!this.ended) this.onmessage({ data: structuredClone(what) });
    }
    terminate(): void {
      this.ended = true;
    }
  }
  vi.stubGlobal('Worker', FakeWorker);
  vi.stubGlobal('document', { baseURI: 'https://ridgeline.test/' });
  return made;
}
