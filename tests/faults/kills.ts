import type { Served } from '../run/serve.ts';
import type { Engine, Machine } from './engine.ts';
import type { Figure } from './figure.ts';
import { markProfile, tellLoss } from './loss.ts';
import { corruptionsOf, storedOf } from './stored.ts';
import { backToRowOne, openBack, rowInHand, sampleBack, thumbOn, watchRows } from './tapping.ts';

export interface Kills {
  kills: number;
  taps: number;
  shown: number;
  /** rows shown as done that were not stored */
  lost: number;
  /** rows stored that nobody tapped */
  invented: number;
  /** what did not hang together, a sentence each */
  corrupted: string[];
  /** each loss, with what lay in the browser afterwards */
  losses: string[];
}

/**
 * Taps as fast as the browser takes it and ends every process of it with SIGKILL at a random moment, again and again
 * with one profile. What was shown as done must be stored, and nothing may be stored that was not tapped.
 */
export async function killWhileTapping(
  engine: Engine,
  host: Served,
  times: number,
  /** a kill comes at a random moment within this time, ms */
  withinMs = 660,
): Promise<Kills> {
  const sum: Kills = { kills: 0, taps: 0, shown: 0, lost: 0, invented: 0, corrupted: [], losses: [] };
  let machine = await engine.open();
  markProfile(machine.profile);
  await openBack(machine.page, host.url);
  for (; sum.kills < times; sum.kills += 1) {
    const { row, of } = await rowInHand(machine.page);
    if (of - row < 80) await backToRowOne(machine, host.url);
    const tapping = await tapUntilKilled(machine, 60 + Math.random() * (withinMs - 60));
    const { before, shown, tapped } = tapping;
    machine = await engine.open(machine.profile);
    await openBack(machine.page, host.url);
    const stored = await storedOf(machine.page, sampleBack);
    const rows = stored.place?.rows ?? 0;
    const screen = (await rowInHand(machine.page)).row - 1;
    sum.taps += tapped;
    sum.shown += shown - before;
    const lost = Math.max(0, shown - rows, shown - screen);
    sum.lost += lost;
    if (lost > 0) {
      sum.losses.push(
        `kill ${sum.kills + 1}: ${await tellLoss(machine, stored, { ...tapping, lost, screen })}`,
      );
      console.log(`  ${engine.name}: ${sum.losses.at(-1)}`);
    }
    // a harness that heard such a row is at fault itself: its count of what was lost is none
    if (shown > before + tapped)
      sum.corrupted.push(`${shown} rows were shown after ${tapped} taps from ${before}`);
    sum.invented += Math.max(0, rows - before - tapped);
    sum.corrupted.push(...corruptionsOf(stored));
    if (sum.kills % 25 === 24) console.log(`  ${engine.name}: ${sum.kills + 1} kills, lost ${sum.lost}`);
    if (screen !== rows) sum.corrupted.push(`the screen shows ${screen} rows done, stored are ${rows}`);
  }
  await machine.close();
  return sum;
}

export interface Tapping {
  /** rows shown as done before the first tap, and at the end */
  readonly before: number;
  readonly shown: number;
  readonly tapped: number;
}

async function tapUntilKilled(machine: Machine, ms: number): Promise<Tapping> {
  const before = (await rowInHand(machine.page)).row - 1;
  const { x, y } = await thumbOn(machine.page);
  const shown = await watchRows(machine.page);
  let tapped = 0;
  let alive = true;
  const tapping = (async () => {
    while (alive) {
      tapped += 1;
      await machine.tap(x, y).catch(() => undefined);
    }
  })();
  await new Promise((resolve) => setTimeout(resolve, ms));
  alive = false;
  await machine.kill();
  await tapping;
  return { before, shown: shown.rows, tapped };
}

export const killFigure = (engine: Engine, { kills, shown, lost, invented, corrupted }: Kills): Figure => ({
  name: `${engine.name}: killed ${kills} times while tapping, ${shown} rows shown as done`,
  measured: `lost ${lost}, corrupted ${corrupted.length}, invented ${invented}${corrupted[0] ? `: ${corrupted[0]}` : ''}`,
  bar: 'lost 0, corrupted 0, invented 0',
  met: lost === 0 && corrupted.length === 0 && invented === 0 && shown >= kills,
});
