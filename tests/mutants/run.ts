/**
 * `npm run mutants`: plants small faults in a copy of the sources, one at a time, and counts those that the unit tests
 * find. `npm run mutants -- --seed 7 --count 500 row` draws 500 of those in src/knit/row; `--each 50` draws 50 of each
 * folder; `--by tests/knit/row` has only the tests of that folder find them, which is quick while they are written;
 * `--share 1/2` tries the first half of those drawn; `planted` tries the faults planted by hand (planted.ts).
 * Fails under the bars.
 */
import { parseArgs } from 'node:util';
import { planted } from './planted.ts';
import { greenUnder } from './try-planted.ts';
import { tryRandom } from './try-random.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string' },
    count: { type: 'string', default: '100' },
    each: { type: 'string' },
    share: { type: 'string', default: '1/1' },
    by: { type: 'string', multiple: true },
  },
});

process.exit((positionals[0] === 'planted' ? await byHand() : await drawn()) ? 0 : 1);

async function byHand(): Promise<boolean> {
  const green = await greenUnder(planted, '.cache/mutants/planted');
  console.log(`${planted.length - green.length} of ${planted.length} planted faults turn their test red.`);
  for (const miss of green) console.log(`MISSED ${miss}`);
  return green.length === 0;
}

function drawn(): Promise<boolean> {
  const { seed, count, each, by } = values;
  const [share = 1, shares = 1] = values.share.split('/').map(Number);
  return tryRandom({
    share,
    shares,
    seed: Number(seed ?? Date.now() % 100_000),
    paths: positionals,
    ...(by === undefined ? {} : { by }),
    ...(each === undefined ? { count: Number(count) } : { each: Number(each) }),
  });
}
