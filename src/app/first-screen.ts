/** Longer than any start takes: what waits for the first screen comes in the end, whatever became of that. */
const AT_LATEST_MS = 5000;

let stands: () => void = () => undefined;

/** Resolves when the first screen of this visit can be read. What is of use only later waits for it. */
export const firstScreen = new Promise<void>((resolve) => {
  stands = resolve;
});

/** Told once the screen is painted; later calls change nothing. */
export const firstScreenStands = (): void => stands();

/** Runs what would only have held up the first screen. */
export function afterFirstScreen(run: () => void): void {
  const timer = setTimeout(stands, AT_LATEST_MS);
  void firstScreen.then(() => {
    clearTimeout(timer);
    run();
  });
}
