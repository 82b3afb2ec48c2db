import { until } from '../browser/until.ts';
import type { Served } from '../run/serve.ts';
import type { Figure } from './figure.ts';
import { corruptionsOf, storedOf } from './stored.ts';
import { openBack, rowInHand, sampleBack, thumbOn, watchRows } from './tapping.ts';
import { webkitEngine } from './webkit.ts';

/** The storage process dies under a live page, again and again, while she taps on: each tap must become a stored row. */
export async function loseStorage(host: Served, times: number): Promise<Figure> {
  const machine = await webkitEngine.open();
  const { page } = machine;
  await openBack(page, host.url);
  const sum = { shown: 0, lost: 0, healed: 0, corrupted: [] as string[] };
  for (let i = 0; i < times; i += 1) {
    const { row: before } = await rowInHand(page);
    const shown = await watchRows(page);
    const { x, y } = await thumbOn(page);
    for (let taps = 0; taps < 8; taps += 1) {
      if (taps === 3) machine.killStorage();
      const { row } = await rowInHand(page);
      await machine.tap(x, y);
      await page
        .locator('.knitting-row strong')
        .filter({ hasText: `Row ${row + 1} of` })
        .waitFor({ timeout: 20_000 });
    }
    const held = () =>
      page.evaluate(() => Object.keys(localStorage).filter((key) => key.includes('.held.')).length);
    const heals = await until(held, (left) => left === 0, 30_000).catch(held);
    await page.reload();
    await openBack(page, host.url);
    const stored = await storedOf(page, sampleBack);
    sum.shown += shown.rows - (before - 1);
    sum.lost += Math.max(0, shown.rows - (stored.place?.rows ?? 0));
    sum.corrupted.push(...corruptionsOf(stored));
    if (heals === 0) sum.healed += 1;
  }
  await machine.close();
  return {
    name: `WebKit: storage process killed ${times} times under a live page, ${sum.shown} rows shown`,
    measured: `lost ${sum.lost}, corrupted ${sum.corrupted.length}, healed without a reload ${sum.healed} of ${times}`,
    bar: `lost 0, corrupted 0, healed ${times} of ${times}`,
    met: sum.lost === 0 && sum.corrupted.length === 0 && sum.healed === times && sum.shown >= 8 * times,
  };
}
