import type { Page } from 'playwright-core';

/** How long the frames took while something was going on, ms, longest last. */
export async function framesDuring(page: Page, work: () => Promise<void>): Promise<number[]> {
  await page.evaluate(beginFrames);
  await work();
  const frames = await page.evaluate(() => frameProbe.end());
  return [...frames].sort((a, b) => a - b);
}

declare global {
  var frameProbe: { end(): number[] };
}

/**
 * Runs in the page: asks for every frame, so that each one that is dropped shows as a longer gap between two. A frame
 * that took long by its own scripts, style or paint counts with that time.
 */
function beginFrames(): void {
  const gaps: number[] = [];
  let last = performance.now();
  let going = true;
  const next = (now: number) => {
    gaps.push(now - last);
    last = now;
    if (going) requestAnimationFrame(next);
  };
  requestAnimationFrame((now) => {
    last = now;
    requestAnimationFrame(next);
  });
  globalThis.frameProbe = {
    end() {
      going = false;
      return gaps;
    },
  };
}
