import type { CDPSession } from 'playwright-core';
import type { Figure } from './figure.ts';
import { framesDuring } from './frames.ts';
import type { BenchPhone } from './phone.ts';
import { median, quantile } from './statistics.ts';
import { openSlowed, type Slowed, type Subject, shown, tapAt, thumbOn } from './subject.ts';

/** 60 frames a second are 16.7 ms each: one frame dropped is 33 ms. */
const MOST_MS = 32;

/** The first row of a part, and the first shaping rows, are among these. */
const ROWS = 20;
const SCROLLS = 4;

/** Of one window, ms, the longest last. */
interface Run {
  readonly still: readonly number[];
  readonly scrolled: readonly number[];
  readonly filled: readonly number[];
}

/**
 * The panel map on a slow phone: the page scrolled past it and back, and rows finished with it in sight, from the first
 * row on. Some windows one after the other, and what counts is the one in the middle: what else the machine does holds
 * up a frame now and then, what the app does holds up the same frame in each.
 */
export async function mapFigures(
  { context, long, rewind }: BenchPhone,
  windows: number,
): Promise<readonly Figure[]> {
  const runs: Run[] = [];
  for (let n = 0; n < windows; n += 1) {
    await rewind(long);
    runs.push(await runIn(await openSlowed(context, 4), long));
  }
  const of = (kind: keyof Run): Frames => runs.map((run) => run[kind]);
  return [
    figureOf('scroll', of('scrolled'), of('still')),
    figureOf('fill row by row', of('filled'), of('still')),
  ];
}

async function runIn(slowed: Slowed, subject: Subject): Promise<Run> {
  const { page, cdp } = slowed;
  await page.goto(subject.address);
  await shown(page, subject);
  await page.locator('.place-map svg').waitFor();
  await page.waitForTimeout(2000);
  await page.locator('.place-map').scrollIntoViewIfNeeded();
  const still = await framesDuring(page, () => page.waitForTimeout(2000));
  const scrolled = await framesDuring(page, () => scroll(cdp, SCROLLS));
  await page.locator('.place-map').scrollIntoViewIfNeeded();
  const filled = await framesDuring(page, () => fill(slowed, subject, ROWS));
  await page.close();
  return { still, scrolled, filled };
}

type Frames = readonly (readonly number[])[];

/** Of each window, ms. */
const longest = (windows: Frames): readonly number[] => windows.map((frames) => quantile(frames, 1));

function figureOf(doing: string, windows: Frames, still: Frames): Figure {
  const each = longest(windows);
  const worst = median(each);
  const all = windows.flat();
  const long = all.filter((ms) => ms > MOST_MS).length;
  const printed = each.map((ms) => ms.toFixed(0)).join(', ');
  return {
    what: `map of 2,000 rows, ${doing}, 4× slower: longest frame`,
    against: `page at rest`,
    unit: 'ms',
    ours: worst,
    theirs: median(longest(still)),
    bound: { value: worst, most: MOST_MS },
    beside: `of ${windows.length} windows ${printed} ms; ${long} of ${all.length} frames over ${MOST_MS} ms`,
  };
}

async function scroll(cdp: CDPSession, times: number): Promise<void> {
  for (let n = 0; n < times; n += 1) {
    for (const yDistance of [-500, 500]) {
      await cdp.send('Input.synthesizeScrollGesture', {
        x: 195,
        y: 350,
        yDistance,
        speed: 900,
        gestureSourceType: 'touch',
      });
    }
  }
}

async function fill(slowed: Slowed, subject: Subject, rows: number): Promise<void> {
  const thumb = await thumbOn(slowed.page, subject);
  for (let n = 0; n < rows; n += 1) {
    await tapAt(slowed, thumb);
    await slowed.page.waitForTimeout(300);
  }
}
