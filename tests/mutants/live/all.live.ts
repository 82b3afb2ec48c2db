import { appendFileSync, readFileSync, writeFileSync } from 'node:fs';
import { it } from 'vitest';
import { reachOfAll } from './find-reach.ts';
import type { Line, OfMutants, Order } from './orders.ts';
import { spent } from './spent.ts';
import { Tries } from './try-trial.ts';

/** The one test that works all others: it runs in the runner's own process, and so has its `expect` and `vi`. */

const order = JSON.parse(readFileSync(process.env.RIDGELINE_ORDER ?? '', 'utf8')) as Order;
const write = (line: Line): void => appendFileSync(order.out, `${JSON.stringify(line)}\n`);

it('works what it is told to', async () => {
  globalThis.__mutant = 0;
  if (order.kind === 'mutants') await tryAll(order);
  else await reachAll(order);
}, 0);

const known: readonly Line[] = readFileSync(order.out, 'utf8')
  .split('\n')
  .filter((line) => line !== '')
  .map((line) => JSON.parse(line) as Line);

const GREEN = 'all tests stay green';

async function reachAll({ root, files, marks }: Extract<Order, { kind: 'reach' }>): Promise<void> {
  const done = new Set(known.map((line) => ('reached' in line ? line.reached.file : '')));
  const left = files.filter((file) => !done.has(file));
  for await (const reached of reachOfAll(root, left, marks)) write({ reached });
}

async function tryAll({ root, trials, alone, longer, out }: OfMutants): Promise<void> {
  const lines = known.flatMap((line) => ('id' in line ? [line] : []));
  const waiting = new Set(lines.filter((line) => 'waits' in line).map(({ id }) => id));
  const isLate = (line: Line) => 'killed' in line && !line.killed && line.late === true;
  const isPassed = (line: Line) =>
    ('killed' in line && !(longer && isLate(line))) || (!alone && 'brokeOff' in line);
  const done = new Set(lines.filter(isPassed).map(({ id }) => id));
  const tries = new Tries(root, longer === true);
  for (const trial of trials) {
    const { id, fresh } = trial;
    if (done.has(id) || (waiting.has(id) && !longer)) continue;
    const began = spent();
    writeFileSync(`${out}.now`, String(trial.id));
    const fate = await tries.switched(trial);
    const ms = Math.round(spent() - began);
    if (fate !== undefined) write({ id, ms, ...fate });
    else if (fresh.length > 0) write({ id, ms, waits: true });
    else write({ id, ms, killed: false, why: trial.steps.length > 0 ? GREEN : 'no test reaches it' });
    if (fate !== undefined) done.add(id);
  }
  for (const trial of trials) {
    if (done.has(trial.id) || trial.fresh.length === 0) continue;
    const began = spent();
    writeFileSync(`${out}.now`, String(trial.id));
    const fate = (await tries.readAnew(trial)) ?? { killed: false, why: GREEN };
    write({ id: trial.id, ms: Math.round(spent() - began), ...fate });
  }
}
