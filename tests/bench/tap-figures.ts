import type { BrowserContext, Page } from 'playwright-core';
import { byMedian, type Figure } from './figure.ts';
import type { BenchPhone } from './phone.ts';
import { inTurns, median, quantile } from './statistics.ts';
import { openSlowed, type Point, type Slowed, type Subject, shown, tapAt, thumbOn } from './subject.ts';
import { type TapTimes, watchTaps } from './tap-probe.ts';

/** From the finger to the disk, and to the screen. */
export async function tapFigures(phone: BenchPhone, turns: number, taps: number): Promise<readonly Figure[]> {
  return [...(await durableFigures(phone, turns, taps)), ...(await paintFigures(phone, turns, taps))];
}

async function durableFigures(phone: BenchPhone, turns: number, taps: number): Promise<readonly Figure[]> {
  const { bare, few, many } = phone;
  const ms = await inTurns(turns, {
    bare: tapping(phone, bare, 1, taps),
    few: tapping(phone, few, 1, taps),
    many: tapping(phone, many, 1, taps),
  });
  const durable = (list: readonly TapTimes[]) => list.map((tap) => tap.durable);
  const unit = 'ms';
  return [
    byMedian(
      { what: 'tap → durable', against: `bare page's single put`, unit, times: 2.2 },
      { ours: durable(ms.few), theirs: durable(ms.bare) },
    ),
    byMedian(
      { what: '100,000 entries: tap → durable', against: '100 entries', unit, times: 1.1 },
      { ours: durable(ms.many), theirs: durable(ms.few) },
    ),
  ];
}

async function paintFigures(phone: BenchPhone, turns: number, taps: number): Promise<readonly Figure[]> {
  const { bare, few } = phone;
  const slowed = 4;
  const ms = await inTurns(turns, {
    ours: tapping(phone, few, slowed, taps),
    theirs: tapping(phone, bare, slowed, taps),
  });
  const names = { against: 'bare page', unit: 'ms', times: 1.5 } as const;
  const next = { ours: ms.ours.map(nextPaint), theirs: ms.theirs.map(({ event }) => event) };
  const done = { ours: ms.ours.map(isDone), theirs: ms.theirs.map(isDone) };
  const p98 = ({ ours, theirs }: typeof next) => ({
    ours: quantile(ours, 0.98),
    theirs: quantile(theirs, 0.98),
    beside: `median ${median(ours).toFixed(0)} against ${median(theirs).toFixed(0)} ms`,
  });
  const nextPaints = p98(next);
  return [
    {
      what: 'tap → next paint, with the next row in it, 4× slower, p98',
      ...names,
      ...nextPaints,
      bound: { value: nextPaints.ours, most: 56 },
    },
    { what: 'tap → shown as done, 4× slower, p98', ...names, ...p98(done) },
  ];
}

/** Event Timing's duration; where the frame that it ends with has not the next row, the time of the frame that has. */
const nextPaint = ({ event, read }: TapTimes): number => Math.max(event, inSteps(read));

const isDone = ({ shown: at }: TapTimes): number => inSteps(at);

/** In steps of 8 ms, as Event Timing has it. */
const inSteps = (ms: number): number => Math.round(ms / 8) * 8;

/** One turn: a window of its own, so many taps, and the row set back for the next. */
const tapping = (phone: BenchPhone, subject: Subject, rate: number, taps: number) => async () => {
  if (subject !== phone.bare) await phone.rewind(subject);
  const tapper = await openTapper(phone.context, subject, rate);
  const times = await tapper.tap(taps);
  await tapper.close();
  return times;
};

/** Long enough for a tap and what follows it (the live region speaks after 250 ms) to be over before the next. */
const REST_MS = 450;

/** A window in which taps are made and measured. */
interface Tapper {
  readonly page: Page;
  tap(times: number): Promise<TapTimes[]>;
  close(): Promise<void>;
}

/** Opens the page at its row in hand, and lets what comes after the first paint come. */
export async function openTapper(context: BrowserContext, subject: Subject, rate = 1): Promise<Tapper> {
  const slowed = await openSlowed(context, rate);
  const { page } = slowed;
  await watchTaps(page, subject);
  await page.goto(subject.address);
  await shown(page, subject);
  await page.waitForTimeout(1500);
  const thumb = await thumbOn(page, subject);
  const tapper: Tapper = {
    page,
    async tap(times) {
      await page.bringToFront();
      const taps: TapTimes[] = [];
      for (let n = 0; n < times; n += 1) taps.push(await tapOnce(slowed, thumb));
      return taps;
    },
    close: () => page.close(),
  };
  await tapper.tap(5);
  return tapper;
}

async function tapOnce(slowed: Slowed, thumb: Point): Promise<TapTimes> {
  const { page } = slowed;
  const before = await page.evaluate(() => tapProbe.tapped());
  await tapAt(slowed, thumb);
  // the page is left alone meanwhile: whatever is asked of it is worked on by its own thread
  await page.waitForTimeout(REST_MS);
  await page.waitForFunction((known) => tapProbe.tapped() > known, before, { polling: 50, timeout: 10_000 });
  return page.evaluate(() => tapProbe.take());
}
