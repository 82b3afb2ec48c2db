/** Set for a run of the tests in Node: Node loads the sources itself (`sources.mjs`), which halves the work of what is run. */
export const byNodeItself = { RIDGELINE_NODE_LOADS: '1' } as const;

/** What such a run adds to the settings of its tests; by themselves they are loaded by the test runner. */
export const nodeLoads = process.env.RIDGELINE_NODE_LOADS
  ? {
      execArgv: ['--import', './tests/run/in-node/register.mjs'],
      // nothing is put in a module's place (`by-the-runner.ts`)
      experimental: { viteModuleRunner: false, nodeLoader: false },
    }
  : {};
