import { describe, expect, it } from 'vitest';
import { nextTask } from '../../src/pace/next-task.ts';

describe('the next task', () => {
  it('comes after all that the one before has still to do', async () => {
    const done: string[] = [];
    const next = nextTask().then(() => done.push('next'));
    for (let n = 0; n < 50; n += 1) await Promise.resolve();
    done.push('this');
    await next;
    expect(done).toEqual(['this', 'next']);
  });

  it('comes for everyone who waits for it, in their order, and again', async () => {
    const come: string[] = [];
    const waits = ['first', 'second', 'third'].map((who) => nextTask().then(() => come.push(who)));
    await Promise.all(waits);
    expect(come).toEqual(['first', 'second', 'third']);
    await nextTask().then(() => come.push('again'));
    expect(come).toHaveLength(4);
  });
});
