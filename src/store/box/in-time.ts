export const pause = (ms: number): Promise<void> =>
  ms === 0 ? Promise.resolve() : new Promise((resolve) => setTimeout(resolve, ms));

/** The value, or a TimeoutError; what comes too late goes to `late`. */
export function inTime<T>(value: Promise<T>, ms: number, late: (value: T) => void): Promise<T> {
  return new Promise((resolve, reject) => {
    let over = false;
    const timer = setTimeout(() => {
      over = true;
      reject(new DOMException('no answer', 'TimeoutError'));
    }, ms);
    value.then(
      (got) => {
        clearTimeout(timer);
        if (over) late(got);
        else resolve(got);
      },
      (error: unknown) => {
        clearTimeout(timer);
        reject(error);
      },
    );
  });
}
