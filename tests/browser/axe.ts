import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** What WCAG 2.2 (A and AA) asks and a machine can see; for what is read while knitting AAA contrast too. */
const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Violations on the page as it stands, one line for each element. The policy of the page stays in force. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (wanted) => {
    const run = (window as unknown as { axe: typeof axe }).axe.run;
    const { violations: found } = await run(document, { runOnly: wanted });
    return found.flatMap(({ id, help, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} (${help}) at ${target.join(' ')}: ${failureSummary}`),
    );
  }, tags);
}
