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

/** With so many mutants, one right after the other. */
const BROKEN = 3;

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

/** Starts a process that works the order at `path`, and tells how it ended. */
export type Start = (path: string) => Promise<{ readonly code: number | null; readonly said: string }>;

const startProcess: Start = async (path) => {
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
  const [code] = (await once(child, 'exit')) as [number | null];
  return { code, said: said.join('') };
};

/**
 * Has an order worked until all of it is done; each new line is told. A mutant with which the process broke off is no
 * find: it is tried again in a process of its own, and where that breaks off too, nobody knows.
 */
export async function workOrder(
  order: Order,
  told: (line: Line) => void,
  start: Start = startProcess,
): Promise<void> {
  await workThrough(order, told, start);
  if (order.kind !== 'mutants') return;
  const late = order.trials.filter(({ id }) => isLate(order, id));
  if (late.length > 0) await workThrough({ ...order, trials: late, longer: true }, told, start);
  for (const trial of order.trials) {
    if (!isBrokenOff(order, trial.id)) continue;
    const ended = await workThrough({ ...order, trials: [trial], alone: true }, told, start);
    if (!ended) write(order, { id: trial.id, ms: 0, killed: false, why: BROKE_OFF, unknown: true }, told);
  }
}

const BROKE_OFF = 'unknown: the process broke off, with this one alone as well';

/**
 * Has it worked in processes of their own, one after the other where one is ended; whether the last came to its end,
 * which is asked of a single mutant. Throws what the process said where it comes no further.
 */
async function workThrough(order: Order, told: (line: Line) => void, start: Start): Promise<boolean> {
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
  for (let idle = 0, broken = 0; ; ) {
    rmSync(`${order.out}.now`, { force: true });
    const looking = setInterval(tell, 1000);
    const { code, said } = await start(path);
    clearInterval(looking);
    const hasGoneOn = tell();
    idle = hasGoneOn ? 0 : idle + 1;
    broken = hasGoneOn ? 0 : broken;
    if (code === 0) return true;
    console.log(`The process ended (${code}), and is begun anew. ${said.slice(0, 2000)}`);
    if (idle < TRIES) continue;
    const id = inHand(order);
    if (order.kind === 'mutants' && order.alone && id !== undefined) return false;
    broken += 1;
    // one after the other: that is no mutant's fault
    if (id === undefined || broken > BROKEN) throw new Error(`The tests could not be worked: ${said}`);
    write(order, { id, ms: 0, brokeOff: true }, () => linesSince());
    idle = 0;
  }
}

/** The mutant that was alive when the process ended, if there was one. */
function inHand({ out }: Order): number | undefined {
  return existsSync(`${out}.now`) ? Number(readFileSync(`${out}.now`, 'utf8')) : undefined;
}

const linesOf = ({ out }: Order, id: number): Line[] =>
  linesIn(out).filter((line) => 'id' in line && line.id === id);

function isLate(order: Order, id: number): boolean {
  const last = linesOf(order, id).findLast((line) => 'killed' in line);
  return last !== undefined && !last.killed && last.late === true;
}

function isBrokenOff(order: Order, id: number): boolean {
  const lines = linesOf(order, id);
  return lines.some((line) => 'brokeOff' in line) && !lines.some((line) => 'killed' in line);
}

function write({ out }: Order, line: Line, told: (line: Line) => void): void {
  appendFileSync(out, `${JSON.stringify(line)}\n`);
  told(line);
}
