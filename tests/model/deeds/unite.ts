import { seeBox } from '../box-seen.ts';
import type { Device } from '../device.ts';
import type { Deed, Hand } from '../hand.ts';
import { sameBoxes } from '../laws.ts';
import type { Page } from '../page.ts';
import { united } from '../truth-of-imports.ts';
import { fileOf, takeIn } from './files.ts';

const otherOf = ({ world, device }: Hand): Device => world.devices.find((one) => one !== device) as Device;

const firstPage = async (device: Device): Promise<Page> => device.pages[0] ?? (await device.open());

/** This device's box is united with a backup of the other one's. */
export const unite: Deed = async (hand) => {
  const from = await firstPage(otherOf(hand));
  const file = await fileOf(from);
  hand.say(`united with the ${from.device.letter}'s backup`);
  const isDone = await takeIn(hand.world, hand.page, file, 'merge');
  return hand.ended(isDone, united(hand.truth, hand.world.truth(from.device)));
};

/** Each device takes in the other's backup, made before: then both are the same. */
export const exchange: Deed = async (hand) => {
  const { world, page, device, truth } = hand;
  const other = await firstPage(otherOf(hand));
  const [mine, theirs] = [await fileOf(page), await fileOf(other)];
  hand.say('each takes in the backup of the other');
  const both = united(truth, world.truth(other.device));
  const came = [await takeIn(world, other, mine, 'merge'), await takeIn(world, page, theirs, 'merge')];
  if (came.includes(false)) throw new Error('a backup of the other device did not come in');
  const wrong = sameBoxes(await seeBox(device), await seeBox(other.device));
  if (wrong !== undefined) throw new Error(`the two devices are not the same: ${wrong}`);
  world.meanwhile(other.device, both);
  return [both];
};
