import type { BrowserContext } from 'playwright-core';
import { openPhone } from '../browser/drive.ts';
import { workerReady } from '../browser/worker.ts';
import { built } from './build.ts';
import { compressingHost } from './host.ts';
import { beginJournal } from './journal.ts';
import { type Fullness, few, fill, longMake, makeInHand, many, setRows } from './seed.ts';
import { appAt, bareAt, type Subject, shown } from './subject.ts';

/** One phone with the bare page and the app twice, each at an address of its own, so that each has its own database. */
export interface BenchPhone {
  readonly context: BrowserContext;
  readonly bare: Subject;
  /** the app with little in it */
  readonly few: Subject;
  /** the app with years in it */
  readonly many: Subject;
  /** the app's panel of 2,000 rows */
  readonly long: Subject;
  /** the app's first page, with the row in hand on a card */
  readonly basket: { readonly few: Subject; readonly many: Subject };
  /** the row in hand by the address that finds it */
  readonly going: { readonly few: Subject; readonly many: Subject };
  /** puts the make that it shows back: the long panel to before its first row, the make in hand to some rows after it */
  rewind(subject: Subject): Promise<void>;
  /** from now on there is no network */
  unplug(): Promise<void>;
  close(): Promise<void>;
}

export async function openBenchPhone(args: readonly string[] = []): Promise<BenchPhone> {
  const hosts = await Promise.all([built.bare, built.app, built.app].map(compressingHost));
  const [bare, less, more] = hosts.map(({ url }) => url) as [string, string, string];
  const { context, profile, close } = await openPhone({ density: 2, args });
  const bareSubject = bareAt(bare);
  const long = appAt(less, longMake);
  await install(context, bareSubject);
  await installApp(context, profile, less, few);
  await installApp(context, profile, more, many);
  const unplug = async () => void (await Promise.all(hosts.map((host) => host.close())));
  return {
    context,
    bare: bareSubject,
    few: appAt(less, makeInHand),
    many: appAt(more, makeInHand),
    long,
    basket: { few: basketAt(less), many: basketAt(more) },
    going: { few: goingAt(less), many: goingAt(more) },
    rewind: (subject) =>
      subject === long ? setBack(context, long, longMake, 0) : setBack(context, subject, makeInHand, 10),
    unplug,
    async close() {
      await close();
      await unplug();
    },
  };
}

const basketAt = (url: string): Subject => ({
  address: url,
  shows: '.in-hand-words',
  reads: '.in-hand-words',
  pad: '.button-main',
});
const goingAt = (url: string): Subject => ({ ...appAt(url, makeInHand), address: `${url}#/continue` });

/** Opens it with the network there, until everything it needs is kept on the device. */
async function install(context: BrowserContext, subject: Subject): Promise<void> {
  const page = await context.newPage();
  await page.goto(subject.address);
  await shown(page, subject);
  await workerReady(page);
  await page.waitForTimeout(1500);
  await page.close();
}

async function installApp(
  context: BrowserContext,
  profile: string,
  url: string,
  fullness: Fullness,
): Promise<void> {
  const page = await context.newPage();
  await page.goto(url);
  await page.locator('.empty').waitFor();
  await fill(page, fullness);
  await beginJournal(page, profile);
  await page.close();
  await install(context, appAt(url, makeInHand));
}

/** Sets how many rows of a make are worked, while nothing shows it. */
async function setBack(
  context: BrowserContext,
  { address }: Subject,
  make: string,
  rows: number,
): Promise<void> {
  const page = await context.newPage();
  await page.goto(new URL('icons/icon.svg', address).href);
  await setRows(page, make, rows);
  await page.close();
}
