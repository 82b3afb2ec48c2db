import { runningVersion, workerReady } from '../browser/worker.ts';
import { type Served, serve } from '../run/serve.ts';
import { builtCopy } from './built-copy.ts';
import type { Engine } from './engine.ts';
import type { Figure } from './figure.ts';
import { openBack, padOf, rowInHand, rowShown, thumbOn } from './tapping.ts';

/** Starts without any network, every process of the browser killed before each: the row in hand is there and goes on. */
export async function startOffline(engine: Engine, times: number, root = builtCopy()): Promise<Figure> {
  return startOfflineFrom(engine, times, await serve({ root }));
}

/** The same, the app fetched from a host that runs and is closed after the first start. */
export async function startOfflineFrom(
  engine: Engine,
  times: number,
  host: Pick<Served, 'url' | 'close'>,
): Promise<Figure> {
  const first = await engine.open();
  await openBack(first.page, host.url);
  await workerReady(first.page);
  const thumb = await thumbOn(first.page);
  await first.tap(thumb.x, thumb.y);
  await rowShown(first.page, 2);
  const version = await runningVersion(first.page);
  await first.kill();
  await host.close();
  let good = 0;
  let why = '';
  for (let start = 0; start < times; start += 1) {
    const machine = await engine.open(first.profile);
    const { page } = machine;
    try {
      await page.goto(`${host.url}#/continue`);
      await padOf(page).waitFor();
      const { row } = await rowInHand(page);
      const { x, y } = await thumbOn(page);
      await machine.tap(x, y);
      await rowShown(page, row + 1);
      if (row === start + 2 && (await runningVersion(page)) === version) good += 1;
      else why ||= `; at start ${start + 1} row ${row} was in hand`;
    } catch (error) {
      why ||= `; at start ${start + 1}: ${String(error).slice(0, 200)}`;
    }
    await machine.kill();
  }
  return {
    name: `${engine.name}: starts with no network, killed before each`,
    measured: `${good} of ${times}${why}`,
    bar: `${times} of ${times}`,
    met: good === times,
  };
}
