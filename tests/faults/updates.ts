import { until } from '../browser/until.ts';
import {
  askForUpdate,
  awaitUpdate,
  cachedPaths,
  precacheList,
  runningVersion,
  settled,
  workerReady,
} from '../browser/worker.ts';
import { type Served, serve } from '../run/serve.ts';
import { assetsOf, assetsUsed, brokenDeploys, deploy, twoVersions } from './deploys.ts';
import { chromiumEngine, type Machine } from './engine.ts';
import { type Figure, printFigures } from './figure.ts';
import { backToRowOne, openBack, rowInHand, rowShown, thumbOn } from './tapping.ts';

interface Installed {
  readonly machine: Machine;
  readonly host: Served;
}

async function install(root: string): Promise<Installed> {
  const host = await serve({ root });
  const machine = await chromiumEngine.open();
  await openBack(machine.page, host.url);
  await workerReady(machine.page);
  await machine.page.reload();
  await openBack(machine.page, host.url);
  return { machine, host };
}

/** Versions change under her needles, up and down in turn; each time every tap must give its row. */
export async function updateWhileKnitting(times: number): Promise<Figure[]> {
  const { old, next } = twoVersions();
  const installed = await install(old);
  const { machine } = installed;
  let { host } = installed;
  const good = { up: 0, down: 0 };
  const why: string[] = [];
  for (let i = 0; i < times; i += 1) {
    const up = i % 2 === 0;
    const [from, to] = up ? [old, next.root] : [next.root, old];
    const faults = await change(machine, host, from, to, (other) => {
      host = other;
    }).catch((error: unknown) => [String(error).slice(0, 300)]);
    if (faults.length === 0) good[up ? 'up' : 'down'] += 1;
    else why.push(`change ${i + 1}: ${faults.join(', ')}`);
  }
  await machine.close();
  await host.close();
  const said = why[0] ? `; ${why[0]}` : '';
  return [
    {
      name: 'Chromium: updates while knitting, no row broken, no files mixed',
      measured: `${good.up + good.down} of ${times}${said}`,
      bar: `${times} of ${times}`,
      met: good.up + good.down === times,
    },
    {
      name: '  of these rolled back to the older version',
      measured: `${good.down} of ${Math.floor(times / 2)}`,
      bar: `${Math.floor(times / 2)} of ${Math.floor(times / 2)}`,
      met: good.down === Math.floor(times / 2),
    },
  ];
}

/** One change of version; the sentences say what went wrong in it. */
async function change(
  machine: Machine,
  host: Served,
  from: string,
  to: string,
  hosted: (host: Served) => void,
): Promise<string[]> {
  const { page } = machine;
  const { row: first, of } = await rowInHand(page);
  if (of - first < 120) await backToRowOne(machine, host.url);
  const { row: before } = await rowInHand(page);
  await page.evaluate(() => Object.assign(window, { untouched: true }));
  const knitting = knit(machine);
  const newer = await deploy(host, to);
  hosted(newer);
  await awaitUpdate(page);
  const tapped = await knitting.stop();
  const faults: string[] = [];
  const check = (holds: boolean, said: string) => holds || faults.push(said);

  await page
    .locator('.knitting-row strong')
    .filter({ hasText: `Row ${before + tapped} of` })
    .waitFor()
    .catch(() => undefined);
  const { row: after } = await rowInHand(page);
  check(after === before + tapped, `${tapped} taps gave ${after - before} rows`);
  check(await page.evaluate(() => 'untouched' in window), 'the window was reloaded');
  await page.evaluate(() => {
    location.hash = '#/settings';
  });
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor();
  check(await page.evaluate(() => 'untouched' in window), 'the window was reloaded by another screen');
  const fromFiles = assetsOf(from);
  check(
    (await assetsUsed(page)).every((name) => fromFiles.has(name)),
    'the window used files of the newer version',
  );

  const runs = await runningVersion(page);
  await page.evaluate(() => {
    location.hash = '#/';
  });
  await page.getByRole('button', { name: 'Change to it now' }).click();
  await until(
    () => runningVersion(page).catch(() => undefined),
    (version) => version !== undefined && version !== runs,
  );
  await settled(page);
  await openBack(page, newer.url);
  check((await rowInHand(page)).row === after, 'another row is in hand after the change');
  const toFiles = assetsOf(to);
  check(
    (await assetsUsed(page)).every((name) => toFiles.has(name)),
    'the window used files of the older version',
  );
  const kept = await cachedPaths(page);
  check(precacheList(to).join() === kept.join(), 'the files kept are not those of the version');
  return faults;
}

/** Taps until it is told to stop, one row after the other; gives the number of taps. */
function knit(machine: Machine): { stop(): Promise<number> } {
  let going = true;
  let tapped = 0;
  const done = (async () => {
    const { x, y } = await thumbOn(machine.page);
    for (; going && tapped < 110; tapped += 1) {
      await machine.tap(x, y);
      await machine.page.waitForTimeout(20);
    }
  })();
  return {
    stop: async () => {
      going = false;
      await done;
      return tapped;
    },
  };
}

/** A newer version that is broken on its way must leave the installed one; a whole one after it is taken up. */
export async function brokenDeploysLeaveItWorking(): Promise<Figure[]> {
  const { old, next } = twoVersions();
  const figures: Figure[] = [];
  for (const [name, instead] of brokenDeploys(next.root)) {
    const said = await survives(old, next.root, instead).catch((error: unknown) =>
      String(error).slice(0, 300),
    );
    figures.push({
      name: `Chromium: a broken deploy, ${name}`,
      measured: said ?? 'the installed version works, the next whole one is taken',
      bar: 'it works',
      met: said === undefined,
    });
    console.log(`  ${printFigures(figures.slice(-1))}`);
  }
  return figures;
}

async function survives(
  old: string,
  next: string,
  instead: Parameters<typeof deploy>[2],
): Promise<string | undefined> {
  const { machine, host } = await install(old);
  const version = await runningVersion(machine.page);
  const broken = await deploy(host, next, instead);
  await askForUpdate(machine.page);
  await machine.page.waitForTimeout(1500);
  await machine.kill();

  // A version that waits is taken when the last window closes: the start from cold is what shows it.
  const again = await chromiumEngine.open(machine.profile);
  const starts = async () => {
    await openBack(again.page, broken.url);
    const { row } = await rowInHand(again.page);
    const { x, y } = await thumbOn(again.page);
    await again.tap(x, y);
    await rowShown(again.page, row + 1);
    await again.page.evaluate(() => {
      location.hash = '#/settings';
    });
    await again.page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor({ timeout: 10_000 });
    return (await runningVersion(again.page)) === version ? undefined : 'the broken version was taken';
  };
  const said = await starts().catch((error: unknown) => `does not start: ${String(error).slice(0, 120)}`);
  if (said !== undefined) {
    await again.close();
    await broken.close();
    return said;
  }
  const whole = await deploy(broken, next);
  const mended = await awaitUpdate(again.page).then(
    () => undefined,
    () => 'the whole version after it is not taken up',
  );
  await again.close();
  await whole.close();
  return mended;
}

/** A first visit cut off after some of its files; the second visit must make it good. */
export async function firstVisitsCutOff(times: number): Promise<Figure> {
  const { old } = twoVersions();
  const files = precacheList(old).length;
  let good = 0;
  let why = '';
  for (let i = 0; i < times; i += 1) {
    const after = 3 + Math.floor(((i + Math.random()) * (files - 3)) / times);
    const said = await cutOff(old, after).catch((error: unknown) => String(error).slice(0, 200));
    if (said === undefined) good += 1;
    else why ||= `; cut off after ${after} files: ${said}`;
  }
  return {
    name: 'Chromium: first visits cut off half-way, made good by the next',
    measured: `${good} of ${times}${why}`,
    bar: `${times} of ${times}`,
    met: good === times,
  };
}

async function cutOff(root: string, after: number): Promise<string | undefined> {
  let answered = 0;
  const host = await serve({
    root,
    instead: (_, response) => {
      answered += 1;
      if (answered > after) response.destroy();
      return answered > after;
    },
  });
  const machine = await chromiumEngine.open();
  await machine.page.goto(host.url).catch(() => undefined);
  await machine.page.waitForTimeout(1000);
  await machine.kill();
  const whole = await deploy(host, root);
  const again = await chromiumEngine.open(machine.profile);
  await openBack(again.page, whole.url);
  await workerReady(again.page);
  const kept = await cachedPaths(again.page);
  await again.close();
  await whole.close();
  return kept.join() === precacheList(root).join() ? undefined : 'the files kept are not all';
}
