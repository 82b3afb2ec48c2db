import type { BrowserContext, CDPSession } from 'playwright-core';
import type { Figure } from './figure.ts';
import { framesDuring } from './frames.ts';
import { quantile } from './statistics.ts';
import { openSlowed, type Slowed, type Subject, shown, tapAt, thumbOn } from './subject.ts';

/** 60 frames a second are 16.7 ms each: one frame dropped is 33 ms. */
const MOST_MS = 32;

/** The panel map on a slow phone: the page scrolled past it and back, and rows finished with it in sight. */
export async function mapFigures(
  context: BrowserContext,
  subject: Subject,
  times: number,
): Promise<readonly Figure[]> {
  const slowed = await openSlowed(context, 4);
  const { page, cdp } = slowed;
  await page.goto(subject.address);
  await shown(page, subject);
  await page.locator('.place-map svg').waitFor();
  await page.waitForTimeout(2000);
  await page.locator('.place-map').scrollIntoViewIfNeeded();
  const still = await framesDuring(page, () => page.waitForTimeout(2000));
  const scrolled = await framesDuring(page, () => scroll(cdp, times));
  await page.locator('.place-map').scrollIntoViewIfNeeded();
  const filled = await framesDuring(page, () => fill(slowed, subject, 2 * times));
  await page.close();
  return [figureOf('scroll', scrolled, still), figureOf('fill row by row', filled, still)];
}

function figureOf(doing: string, frames: readonly number[], still: readonly number[]): Figure {
  const worst = quantile(frames, 1);
  const long = frames.filter((ms) => ms > MOST_MS).length;
  return {
    what: `map of 2,000 rows, ${doing}, 4× slower: longest frame`,
    against: `page at rest`,
    unit: 'ms',
    ours: worst,
    theirs: quantile(still, 1),
    bound: { value: worst, most: MOST_MS },
    beside: `${long} of ${frames.length} frames over ${MOST_MS} ms, median ${quantile(frames, 0.5).toFixed(1)} ms`,
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
