import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { resolve } from 'node:path';
import type { Answer, Order } from './executor.ts';
import type { Told } from './in-vitest.ts';

export type Outcome = Told | 'too long' | 'broke off';

export interface Runner {
  run(order: Order): Promise<Outcome>;
  close(): void;
}

/** Runs tests in a process of its own, which is ended and begun anew where they do not end in time. */
export function openRunner(root: string, env: Record<string, string> = {}): Runner {
  let child: Promise<ChildProcess> | undefined;
  // what was changed for the run before has been put back since
  let putBack: readonly string[] = [];
  const start = async (): Promise<ChildProcess> => {
    const args = ['tests/mutants/executor.ts', resolve(root)];
    const started = fork('tests/run/run.mjs', args, { env: { ...process.env, ...env }, silent: true });
    await once(started, 'message');
    return started;
  };
  const end = async (): Promise<void> => {
    const ended = await child;
    child = undefined;
    ended?.kill('SIGKILL');
  };
  return {
    run: async (order) => {
      child ??= start();
      const running = await child;
      const changed = [...new Set([...order.changed, ...putBack])];
      putBack = order.changed;
      const outcome = await answer(running, { ...order, changed });
      if (typeof outcome === 'string') await end();
      return outcome;
    },
    close: () => void end(),
  };
}

async function answer(child: ChildProcess, order: Order): Promise<Outcome> {
  child.send(order);
  const over = new AbortController();
  const { signal } = over;
  try {
    const [told] = (await Promise.race([
      once(child, 'message', { signal }),
      once(child, 'exit', { signal }).then(() => ['broke off']),
    ])) as [Answer | 'broke off'];
    if (typeof told === 'object' && 'error' in told) throw new Error(told.error);
    return told;
  } finally {
    over.abort();
  }
}
