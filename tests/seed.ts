/**
 * The seed of all that is tried at random: the same here, there and every day, so that what was red is red again.
 * $RIDGELINE_SEED takes another; a property that fails prints its own, the runner that of the tests' order.
 */
export const seed = Number(process.env.RIDGELINE_SEED ?? 2_401);
