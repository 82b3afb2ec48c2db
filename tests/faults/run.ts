/**
 * `npm run faults`: kills, broken deploys, full disks, hostile files, in every engine that this machine has. Prints a
 * table of figures and fails where one is missed. Names of steps run only those: `npm run faults -- kills tabs`.
 */
import { mkdirSync } from 'node:fs';
import { closePhones } from '../browser/drive.ts';
import { askedSteps } from '../run/asked-steps.ts';
import { buildIfNeeded, dist } from '../run/built.ts';
import { requireChromium } from '../run/chromium.ts';
import { type CannotRun, cannotRun, type Figure, printFigures } from './figure.ts';
import { type StepName, steps } from './steps.ts';

const names: readonly StepName[] = askedSteps(steps);

process.env.CHROMIUM = requireChromium();
mkdirSync('.cache/faults', { recursive: true });
buildIfNeeded(dist);

const done: (Figure | CannotRun)[] = [];
for (const name of names) {
  const start = performance.now();
  const made = await steps[name]().catch((error: unknown) => [
    { name, measured: error instanceof Error ? error.message : String(error), bar: 'ends', met: false },
  ]);
  done.push(...made);
  console.log(`${printFigures(made)}\n  ${name}: ${((performance.now() - start) / 1000).toFixed(0)} s\n`);
}

console.log(`\n${printFigures(done)}\n`);
const missed = done.filter((step) => !cannotRun(step) && !step.met).length;
console.log(`${done.length} figures, ${missed} missed, ${done.filter(cannotRun).length} could not run here.`);
process.exitCode = missed > 0 ? 1 : 0;

try {
  await closePhones();
} catch (error) {
  // A killed browser may still be writing; the system clears its folder for passing files by itself.
  console.log(`A profile was left behind: ${String(error)}`);
}

// a check that broke off may have left a browser open
process.exit();
