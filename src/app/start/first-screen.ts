let stands: () => void = () => undefined;

/** Resolves when the first screen of this visit can be read. What is of use only later waits for it. */
export const firstScreen = new Promise<void>((resolve) => {
  stands = resolve;
});

/** Told once the screen is painted; later calls change nothing. */
export const firstScreenStands = (): void => stands();
