/**
 * `npm run bench`: how fast the app is, as ratios to a bare page (or to less of the same) measured in the same run.
 * Prints a table, keeps it as JSON and fails where a budget is missed. Names of steps run only those, a share of the
 * repetitions comes by $RIDGELINE_SHARE: `RIDGELINE_SHARE=0.2 npm run bench -- taps starts`.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { closePhones } from '../browser/drive.ts';
import { askedSteps } from '../run/asked-steps.ts';
import { requireChromium } from '../run/chromium.ts';
import { buildAll } from './build.ts';
import { type Figure, isMet, printTable, ratioOf } from './figure.ts';
import { type StepName, steps } from './steps.ts';

const names: readonly StepName[] = askedSteps(steps);

process.env.CHROMIUM = requireChromium();
mkdirSync('.cache', { recursive: true });
await buildAll();

const figures: Figure[] = [];
for (const name of names) {
  const start = performance.now();
  const made = await steps[name]();
  figures.push(...made);
  console.log(`${printTable(made)}\n${name}: ${((performance.now() - start) / 1000).toFixed(0)} s\n`);
}
await closePhones();

const results = figures.map((figure) => ({ ...figure, ratio: ratioOf(figure), met: isMet(figure) }));
writeFileSync('.cache/bench.json', `${JSON.stringify(results, undefined, 2)}\n`);
const missed = results.filter(({ met }) => !met).length;
console.log(`${printTable(figures)}\n\n${figures.length} figures, ${missed} missed.`);
if (missed > 0) process.exitCode = 1;
