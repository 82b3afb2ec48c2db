import type { Deed } from '../hand.ts';

/** A second window on the same box. */
export const openPage: Deed = async (hand) => {
  if (hand.device.pages.length < 2) {
    const make = hand.make();
    hand.say(make === undefined ? 'a window' : `a window on ${make}`);
    await hand.device.open(make === undefined ? undefined : { screen: 'knitting', make });
  }
  return hand.unchanged;
};

/** The page is loaded anew where it is; what was not saved is gone. */
export const reload: Deed = async (hand) => {
  const { at } = hand.page;
  hand.say(`reload at ${JSON.stringify(at)}`);
  await hand.device.leave(hand.page);
  await hand.device.open(at);
  return hand.unchanged;
};

export const closePage: Deed = async (hand) => {
  if (hand.device.pages.length > 1) {
    hand.say('a window closed');
    await hand.device.leave(hand.page);
  }
  return hand.unchanged;
};

/** From now on it hears nothing of what other windows do, or it hears again and is looked at. */
export const deafen: Deed = async (hand) => {
  hand.page.deaf = !hand.page.deaf;
  hand.say(hand.page.deaf ? 'hears nothing' : 'hears again');
  if (!hand.page.deaf) await hand.page.seen();
  return hand.unchanged;
};

const DAY = 86_400_000;
const jumps = [-400 * DAY, -DAY, 3_600_000, DAY, 400 * DAY];

/** Its clock is set forwards or back. */
export const setClock: Deed = async (hand) => {
  const by = hand.pick(jumps) ?? 0;
  hand.say(`the clock set by ${by / DAY} days`);
  hand.device.clock += by;
  return hand.unchanged;
};
