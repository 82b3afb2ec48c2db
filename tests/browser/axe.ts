import axe, { type RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

/** What WCAG 2.2 (A and AA) asks and a machine can see; for what is read while knitting AAA contrast too. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Of these what hangs on colours and sizes: all that another look of the same page can break. */
const looked = ['color-contrast', 'link-in-text-block', 'scrollable-region-focusable', 'target-size'];

/** Violations on the page as it stands, one line for each element. The policy of the page stays in force. */
export async function violations(page: Page, of: 'all' | 'look' = 'all'): Promise<string[]> {
  await atRest(page);
  const found = await run(page, of === 'all' ? tags : looked);
  // what lies half under the bar at the foot is as large as it is once it is scrolled into sight
  const small = found.filter(({ id }) => id === 'target-size');
  const still = [];
  for (const one of small) {
    await page
      .locator(one.at)
      .first()
      .evaluate((it) => it.scrollIntoView({ block: 'center' }));
    still.push(...(await run(page, ['target-size'])).filter(({ id, at }) => id === one.id && at === one.at));
  }
  return [...found.filter((one) => !small.includes(one)), ...still].map(
    ({ id, help, at, summary }) => `${id} (${help}) at ${at}: ${summary}`,
  );
}

/** A colour half-way through its change is nobody's contrast. (All of the app's changes take less than a second.) */
const atRest = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const ends = document.getAnimations().map((one) => one.finished.catch(() => undefined));
    await Promise.race([Promise.all(ends), new Promise((done) => setTimeout(done, 1000))]);
  });

interface Violation {
  readonly id: string;
  readonly help: string;
  readonly at: string;
  readonly summary: string;
}

async function run(page: Page, wanted: readonly string[]): Promise<Violation[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  // what passes is not described: that took a fifth of the time; no rule of these judges by style sheets or films fetched anew
  const options: RunOptions = { runOnly: [...wanted], resultTypes: ['violations'], preload: false };
  return page.evaluate(async (how) => {
    const { run: check } = (window as unknown as { axe: typeof axe }).axe;
    const { violations: all } = await check(document, how);
    return all.flatMap(({ id, help, nodes }) =>
      nodes.map(({ target, failureSummary }) => ({
        id,
        help,
        at: target.join(' '),
        summary: failureSummary ?? '',
      })),
    );
  }, options);
}
