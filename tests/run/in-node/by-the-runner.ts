/**
 * Tests that begin the app's modules once more, as a page does that is opened again, or put something in the place of one.
 * Node keeps a module for as long as it runs: these stand on the test runner's own modules, which can be forgotten.
 */
export const forgetting = [
  'tests/app/device/installing.test.ts',
  'tests/app/off-thread/worker.test.ts',
  'tests/app/start/service-worker.test.ts',
  'tests/app/two-screens.test.ts',
  'tests/model/model.test.ts',
  'tests/pace/first-screen.test.ts',
  'tests/run/resting.test.ts',
  'tests/words/every-fault/every-fault.test.ts',
  'tests/words/said-anew.test.ts',
] as const;

/** A package for pages has no form that Node loads (workbox-window names no module of its own). */
const forPages = ['tests/app/start/worker-page.test.ts'] as const;

/** What the test runner loads, where Node loads the others. */
export const byTheRunner = [...forgetting, ...forPages] as const;
