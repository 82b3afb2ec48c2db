import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, it, vi } from 'vitest';
import { loadApps } from './apps.ts';
import { fixedChance } from './chance.ts';
import { deeds } from './deeds/all.ts';
import { beginGarment } from './deeds/garments.ts';
import { exchange } from './deeds/unite.ts';
import { drawn, Step } from './step.ts';
import { wardrobe } from './wardrobe.ts';
import { World } from './world.ts';
import '../app/tasks-here.ts';

/** Lives that are lived through; more with RIDGELINE_MODEL_RUNS. */
const {
  RIDGELINE_MODEL_RUNS = '2',
  RIDGELINE_MODEL_SECONDS,
  RIDGELINE_MODEL_PATH,
  RIDGELINE_MODEL_DEEDS,
} = process.env;
const DEEDS_MOST = 24;

/** One that failed is lived through again with $RIDGELINE_SEED, its path and its replayPath, as they were printed. */
const again = {
  ...(RIDGELINE_MODEL_PATH !== undefined && { path: RIDGELINE_MODEL_PATH }),
  numRuns: Number(RIDGELINE_MODEL_RUNS),
  ...(RIDGELINE_MODEL_SECONDS !== undefined && {
    interruptAfterTimeLimit: Number(RIDGELINE_MODEL_SECONDS) * 1000,
  }),
};
const replayed = RIDGELINE_MODEL_DEEDS === undefined ? {} : { replayPath: RIDGELINE_MODEL_DEEDS };

const step = fc.oneof(
  ...Object.entries(deeds).map(([name, { deed, weight }]) => ({
    weight,
    arbitrary: drawn().map((where) => new Step(name, deed, where)),
  })),
);

const life = fc.record({
  garments: wardrobe(),
  isShared: fc.boolean(),
  steps: fc.commands([step], { maxCommands: DEEDS_MOST, size: 'max', ...replayed }),
});

const first = { device: 0, page: 0, numbers: [0] };
/** On each device there is a garment; in every second life one of them is on both. */
const beginnings = [
  new Step('begin a garment', beginGarment, first),
  new Step('exchange', exchange, first),
  new Step('begin a garment', beginGarment, { ...first, device: 1 }),
];

beforeAll(async () => {
  vi.useFakeTimers({ toFake: ['Date'] });
  await loadApps(5);
}, 120_000);

let lives = 0;
afterAll(() => {
  console.log(`lives lived: ${lives}; deeds done: ${JSON.stringify(Object.fromEntries(Step.done))}`);
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

describe('three devices with two windows each', () => {
  it('lose nothing, show nothing that is not stored, and can always be backed up, whatever is done on them', async () => {
    await fc.assert(
      fc.asyncProperty(life, async ({ garments, isShared, steps }) => {
        fixedChance();
        lives += 1;
        const world = new World(garments);
        try {
          for (const step of isShared ? beginnings : beginnings.filter(({ deed }) => deed !== exchange))
            await step.run(world);
          await fc.asyncModelRun(() => ({ model: world, real: world }), steps);
        } finally {
          await world.close();
        }
      }),
      again,
    );
  }, 7_200_000);
});
