import { appendFileSync, readFileSync } from 'node:fs';
import { BroadcastChannel } from 'node:worker_threads';
import { openTests } from '../in-vitest.ts';
import { channel, type Now } from './looker.ts';
import type { Line, Order } from './orders.ts';
import { spent } from './spent.ts';

/**
 * The process in which tests are worked (work-order.ts starts it). Its first thread looks after the second: where a
 * test with a mutant takes far more of the processor than without, that is written down, and the process ends.
 */

const path = process.env.RIDGELINE_ORDER ?? '';
const { root, out } = JSON.parse(readFileSync(path, 'utf8')) as Order;

let now: (Now & { began: number }) | undefined;
const looker = new BroadcastChannel(channel);
looker.onmessage = (event) => {
  now = { ...(event as { data: Now }).data, began: spent() };
};
setInterval(() => {
  if (now === undefined || spent() - now.began < now.ms) return;
  if (now.id !== 0) {
    const line: Line = { id: now.id, ms: Math.round(now.ms), killed: true, by: `does not end: ${now.what}` };
    appendFileSync(out, `${JSON.stringify(line)}\n`);
  }
  process.kill(process.pid, 'SIGKILL');
}, 250);

const vitest = await openTests(root, 'tests/mutants/live/all.live.ts');
const project = vitest.projects[0];
if (project === undefined) throw new Error('The tests have no project.');
const { testModules, unhandledErrors } = await vitest.runTestSpecifications([
  project.createSpecification(`${root}/tests/mutants/live/all.live.ts`),
]);
const [module] = testModules;
const [error] = [
  ...(module?.errors() ?? []),
  ...[...(module?.children.allTests('failed') ?? [])].flatMap((test) => test.result().errors ?? []),
];
if (error !== undefined || module === undefined) console.error(error ?? unhandledErrors);
process.exit(error === undefined && module !== undefined ? 0 : 1);
