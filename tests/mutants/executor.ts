import { type Asked, openTests, runAsked, type Told } from './in-vitest.ts';

/**
 * The process in which the tests of the copy run: started by runner.ts, which ends it where a mutant never does. It is
 * told what changed and what to run, and answers what came of it.
 */

export interface Order {
  /** what the processor may spend on it, ms: unlike time, the same on a busy machine */
  readonly ms: number;
  readonly changed: readonly string[];
  readonly asked: readonly Asked[];
}

export type Answer = Told | 'too long' | { readonly error: string };

const [root = ''] = process.argv.slice(2);
const vitest = await openTests(root);

process.on('message', async ({ ms, changed, asked }: Order) => {
  const before = process.cpuUsage();
  const watch = setInterval(() => {
    const { user, system } = process.cpuUsage(before);
    if ((user + system) / 1000 > ms) process.send?.('too long' satisfies Answer);
  }, 500);
  for (const path of changed) vitest.invalidateFile(path);
  const answer: Answer = await runAsked(vitest, asked).catch((error: unknown) => ({ error: String(error) }));
  clearInterval(watch);
  process.send?.(answer);
});
// who started it is gone
process.on('disconnect', () => process.exit());
process.send?.('ready');
