import { type Deed, Hand } from '../hand.ts';
import { edit, save } from './editing.ts';
import { changeFigures, deleteGarment, photograph, tickStep, writeNotes } from './garments.ts';
import { jot, setPlace, tap, undo } from './knitting.ts';
import { planAnew } from './planning.ts';
import { exchangeWith } from './unite.ts';

const ways: readonly Deed[] = [
  tap,
  planAnew,
  undo,
  tap,
  planAnew,
  setPlace,
  save,
  edit,
  tickStep,
  writeNotes,
  jot,
  photograph,
  changeFigures,
  deleteGarment,
];

/** Both devices have the same make in hand, each goes its own way with it, and then they meet. */
export const goApart: Deed = async (hand) => {
  const { world, device, numbers } = hand;
  const make = hand.make();
  const other = hand.pick(world.devices.filter((one) => one !== device));
  if (make === undefined || !other || !world.truth(other).makes.has(make)) return hand.unchanged;
  hand.say(`each goes its own way with ${make}`);
  for (const [i, one] of [device, other].entries()) {
    const page = one.pages[0] ?? (await one.open());
    page.stage();
    await page.go({ screen: 'knitting', make });
    for (let step = 0; step < 3; step += 1) {
      const from = 1 + 3 * i + step;
      const there = new Hand(world, one, page, [...numbers.slice(from), ...numbers.slice(0, from)]);
      const deed = there.pick(ways) ?? tap;
      const ended = await deed(there);
      await one.quiet();
      await world.check('apart', one, ended);
      hand.say(`${one.letter}: ${there.said.join()}`);
    }
  }
  return exchangeWith(hand, other);
};
