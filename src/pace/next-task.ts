const { port1, port2 } = new MessageChannel();

/**
 * Comes back in a task of its own: what is done in one task holds up a frame that is due by all of it. Not by a timer,
 * which comes late in a page out of sight.
 */
export const nextTask = (): Promise<void> =>
  new Promise((resolve) => {
    port1.addEventListener('message', () => resolve(), { once: true });
    port1.start();
    port2.postMessage(0);
  });
