import { Session } from 'node:inspector/promises';
import { setFlagsFromString } from 'node:v8';
import { afterAll, beforeAll } from 'vitest';

/**
 * How often functions of our own code were called while something ran: work counted, not timed, so it is the same on a
 * busy machine. Blocks are not counted: the engine tells of some of them only, and not always of the same. What is
 * built in (copying a list, a set) is not in it. It is run once before, to be there whole when it is counted: the same,
 * or what needs the same and is sooner done.
 */
export type CountWork = (run: () => unknown, before?: () => unknown) => Promise<number>;

/**
 * For the tests of one group: call it in a `describe` of their own. To begin and to end counting goes through all that
 * the process holds, so that it is done once for all of them.
 */
export function countingWork(): CountWork {
  let session: Session;
  beforeAll(async () => {
    session = new Session();
    session.connect();
    // a function that was optimized, or taken into another one, is not counted any more
    setFlagsFromString('--no-opt');
    await session.post('Profiler.enable');
    await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
  });
  afterAll(async () => {
    await session.post('Profiler.stopPreciseCoverage');
    session.disconnect();
    setFlagsFromString('--opt');
  });
  return async (run, before = run) => {
    before();
    await session.post('Profiler.takePreciseCoverage');
    run();
    const { result } = await session.post('Profiler.takePreciseCoverage');
    return result
      .filter(({ url }) => url.includes('/src/'))
      .flatMap(({ functions }) => functions.flatMap(({ ranges }) => ranges.map(({ count }) => count)))
      .reduce((sum, count) => sum + count, 0);
  };
}
