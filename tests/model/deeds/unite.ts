import { seeBox } from '../box-seen.ts';
import type { Device } from '../device.ts';
import type { Deed, Hand } from '../hand.ts';
import { sameBoxes } from '../laws.ts';
import type { Page } from '../page.ts';
import type { Truth } from '../truth.ts';
import { united } from '../truth-of-imports.ts';
import { fileOf, takeIn } from './files.ts';

const otherOf = (hand: Hand): Device =>
  hand.pick(hand.world.devices.filter((one) => one !== hand.device)) as Device;

const firstPage = async (device: Device): Promise<Page> => device.pages[0] ?? (await device.open());

/** This device's box is united with a backup of the other one's. */
export const unite: Deed = async (hand) => {
  const from = await firstPage(otherOf(hand));
  const file = await fileOf(from);
  hand.say(`united with the ${from.device.letter}'s backup`);
  const isDone = await takeIn(hand.world, hand.page, file, 'merge');
  return hand.ended(isDone, united(hand.truth, hand.world.truth(from.device)));
};

/** Everything here is replaced by what the other device has, which may be further on with the same garment, or not as far. */
export const replaceByOther: Deed = async (hand) => {
  const from = await firstPage(otherOf(hand));
  const file = await fileOf(from);
  hand.say(`everything replaced by the ${from.device.letter}'s backup`);
  const isDone = await takeIn(hand.world, hand.page, file, 'replace');
  return hand.ended(isDone, { ...hand.world.truth(from.device), written: [] });
};

/** Each device takes in the other's backup, made before: then both are the same. */
export const exchange: Deed = (hand) => exchangeWith(hand, otherOf(hand));

export async function exchangeWith(hand: Hand, theOther: Device): Promise<readonly Truth[]> {
  const { world, page, device, truth } = hand;
  const other = await firstPage(theOther);
  const [mine, theirs] = [await fileOf(page), await fileOf(other)];
  hand.say('each takes in the backup of the other');
  const both = united(truth, world.truth(other.device));
  const came = [await takeIn(world, other, mine, 'merge'), await takeIn(world, page, theirs, 'merge')];
  if (came.includes(false)) throw new Error('a backup of the other device did not come in');
  const wrong = sameBoxes(await seeBox(device), await seeBox(other.device));
  if (wrong !== undefined) throw new Error(`the two devices are not the same: ${wrong}`);
  world.meanwhile(other.device, both);
  return [both];
}
