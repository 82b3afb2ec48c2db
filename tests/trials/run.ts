/** Prints what the answers to a count that does not agree are worth, over simulated slips; fails where a bar is missed. */
import { explainTrials } from './explain-trials.ts';
import { placeTrials, reworkTrials, ripTrials } from './other-trials.ts';
import { tableBy } from './print.ts';

const [seed = 1, count = 2000] = process.argv.slice(2).map(Number);
let missed = 0;

function bar(name: string, met: boolean, said: string): void {
  if (!met) missed += 1;
  console.log(`${met ? 'met   ' : 'MISSED'} ${name}: ${said}`);
}

const percent = (n: number, of: number): string => `${((100 * n) / of).toFixed(1)} %`;

const slips = explainTrials(count, seed);
const shown = slips.filter((slip) => slip.shows);
const three = shown.filter((slip) => slip.amongThree).length;
const first = shown.filter((slip) => slip.firstAfterLook).length;
console.log(`Shares in per cent of the slips that a count shows; ${slips.length} slips, seed ${seed}.\n`);
for (const by of ['kind', 'fabric', 'asked'] as const) console.log(`${tableBy(slips, by)}\n`);
bar(
  'true cause among the first three',
  three >= 0.95 * shown.length,
  `${percent(three, shown.length)}, at least 95 %`,
);
bar(
  'true cause first after one look',
  first >= 0.9 * shown.length,
  `${percent(first, shown.length)}, at least 90 %`,
);

const places = placeTrials(count, seed);
const left = places.left.map((n) => n.toFixed(1)).join(', ');
bar(
  'find my place holds the true row',
  places.missed === 0,
  `missed ${places.missed} of ${places.trials}; rows left after 1, 2, 3 … observations: ${left}`,
);

const reworks = reworkTrials(count, seed);
const why = Object.entries(reworks.why)
  .map(([code, times]) => `${times} ${code}`)
  .join(', ');
bar(
  'rework keeps worked rows and meets the end, or says why not',
  reworks.broken === 0,
  `${reworks.met} met, ${reworks.refused} refused (${why}), ${reworks.broken} broken`,
);

const rips = ripTrials(count, seed);
bar(
  'rip back, then forward: same counts',
  rips.differing === 0,
  `${rips.differing} of ${rips.trials} differ`,
);
if (missed > 0) process.exitCode = 1;
