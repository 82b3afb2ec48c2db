import { inTime } from '../../src/store/box/in-time.ts';

/**
 * Asks again and again until the answer will do, and gives it. Rejects with the last answer after `timeoutMs`.
 * (A page's own waiting does not wait for promises.)
 */
export async function until<T>(
  ask: () => Promise<T>,
  willDo: (answer: T) => boolean,
  timeoutMs = 10_000,
): Promise<T> {
  const giveUpAt = performance.now() + timeoutMs;
  for (;;) {
    const answer = await ask();
    if (willDo(answer)) return answer;
    if (performance.now() > giveUpAt)
      throw new Error(`Still ${JSON.stringify(answer)} after ${timeoutMs} ms.`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/**
 * The promise's own answer; a failure, or none after `limitMs`, says what was waited for. What is asked of a page has no
 * limit of its own: a page that never answers would be a test that ends without a word of where it stood.
 */
export const within = <T>(limitMs: number, what: string, answer: Promise<T>): Promise<T> =>
  inTime(answer, limitMs, () => undefined).catch((cause: unknown) => {
    throw new Error(`${what}: ${String(cause)}`, { cause });
  });
