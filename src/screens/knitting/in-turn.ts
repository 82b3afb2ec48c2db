import { nextTask } from '../../pace/next-task.ts';

/** A part of the screen that is there as soon as it is fetched. */
export interface Fetched {
  readonly fetch: () => Promise<unknown>;
}

/** Each in a task of its own, and a frame that is due between two of them. */
export async function inTurn(parts: readonly Fetched[]): Promise<void> {
  for (const part of parts) {
    await part.fetch();
    await nextTask();
  }
}
