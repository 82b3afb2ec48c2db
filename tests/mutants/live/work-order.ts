import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { appendFileSync, existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import type { Line, Order } from './orders.ts';

/** Laws are tried with fewer garments, drafts and texts than else: what is found by those is found by more as well. */
const brief = { RIDGELINE_GARMENTS: '60', RIDGELINE_DRAFTS: '24', RIDGELINE_FUZZ: '300' };

/** So many processes work at once. */
export const PROCESSES = 2;

/** How often a process may break off without anything new written down. */
const TRIES = 3;

export const linesIn = (path: string): Line[] => linesFrom(path)();

/** The whole lines of a file that is written on, each time only those that are new: there are many megabytes of them. */
function linesFrom(path: string): () => Line[] {
  let read = 0;
  return () => {
    if (!existsSync(path) || statSync(path).size === read) return [];
    const fresh = readFileSync(path).subarray(read);
    const whole = fresh.subarray(0, fresh.lastIndexOf('\n') + 1);
    read += whole.length;
    const lines = whole.toString('utf8').split('\n').slice(0, -1);
    return lines.map((line) => JSON.parse(line) as Line);
  };
}

/** Has orders worked side by side; all lines that came of them, those of an earlier run as well. */
export async function workOrders(orders: readonly Order[], told: (line: Line) => void): Promise<Line[]> {
  await Promise.all(orders.map((order) => workOrder(order, told)));
  return orders.flatMap(({ out }) => linesIn(out));
}

/** A list in so many parts, each of what lies together in it. */
export function partsOf<T>(list: readonly T[], parts: number): T[][] {
  const size = Math.ceil(list.length / parts);
  return Array.from({ length: parts }, (_, part) => list.slice(part * size, (part + 1) * size));
}

/**
 * Has an order worked in processes of their own, one after the other where one is ended, until all of it is done; each
 * new line is told. Throws what the process said where it comes no further.
 */
async function workOrder(order: Order, told: (line: Line) => void): Promise<void> {
  const path = `${order.out}.order`;
  writeFileSync(path, JSON.stringify(order));
  if (!existsSync(order.out)) writeFileSync(order.out, '');
  const linesSince = linesFrom(order.out);
  linesSince();
  const tell = (): boolean => {
    const fresh = linesSince();
    for (const line of fresh) told(line);
    return fresh.length > 0;
  };
  for (let idle = 0; idle < TRIES; ) {
    const said: string[] = [];
    const child = spawn(
      process.execPath,
      ['--max-old-space-size=3000', 'tests/run/run.mjs', 'tests/mutants/live/executor.ts'],
      {
        env: { ...process.env, ...brief, RIDGELINE_ORDER: path, RIDGELINE_MUTANT: '1' },
        stdio: ['ignore', 'ignore', 'pipe'],
      },
    );
    child.stderr.on('data', (data) => said.push(String(data)));
    const looking = setInterval(tell, 1000);
    const [code] = (await once(child, 'exit')) as [number | null];
    clearInterval(looking);
    idle = tell() ? 0 : idle + 1;
    if (code !== 0)
      console.log(`The process ended (${code}), and is begun anew. ${said.join('').slice(0, 2000)}`);
    if (code === 0) return;
    if (idle >= TRIES && brokenOff(order)) idle = 0;
    else if (idle >= TRIES) throw new Error(`The tests could not be worked: ${said.join('')}`);
  }
}

/** The mutant that was alive when the process ended, again and again: it is found. Whether there was one. */
function brokenOff({ out }: Order): boolean {
  if (!existsSync(`${out}.now`)) return false;
  const id = Number(readFileSync(`${out}.now`, 'utf8'));
  const line: Line = { id, ms: 0, killed: true, by: 'the process broke off' };
  appendFileSync(out, `${JSON.stringify(line)}\n`);
  rmSync(`${out}.now`);
  return true;
}
