import { Session } from 'node:inspector/promises';
import { setFlagsFromString } from 'node:v8';

/**
 * How often the engine entered any block of the craft's own code while something ran: work counted, not timed, so it is
 * the same on a busy machine. What built-in functions do by themselves (copying a list, a set) is not in it.
 */
export async function countedWork(run: () => unknown): Promise<number> {
  const session = new Session();
  session.connect();
  // a function that was optimized, or taken into another one, is not counted any more
  setFlagsFromString('--no-opt');
  try {
    await session.post('Profiler.enable');
    await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
    await session.post('Profiler.takePreciseCoverage');
    run();
    const { result } = await session.post('Profiler.takePreciseCoverage');
    await session.post('Profiler.stopPreciseCoverage');
    return result
      .filter(({ url }) => url.includes('/src/knit/'))
      .flatMap(({ functions }) => functions.flatMap(({ ranges }) => ranges.map(({ count }) => count)))
      .reduce((sum, count) => sum + count, 0);
  } finally {
    session.disconnect();
    setFlagsFromString('--opt');
  }
}
