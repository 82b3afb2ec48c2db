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
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}
