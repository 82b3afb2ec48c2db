import { signal } from '@preact/signals';

/**
 * The worker could not keep the app for offline use at this visit: a file did not come as it was built (a host or a
 * network that changes pages on their way), or the network broke off.
 */
export const refusedToKeep = signal(false);
