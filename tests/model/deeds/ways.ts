import { given } from '../../store/scenario.ts';
import { fingerprint, seeBox } from '../box-seen.ts';
import type { Deed } from '../hand.ts';
import { forgetting, moved } from '../truth.ts';

/** Where the devices went two ways with a make, she says by which of them she goes on; or she takes one up again. */
export const chooseWay: Deed = async (hand) => {
  const { page, truth, device } = hand;
  const parted = [...(await seeBox(device)).places.values()].filter(({ ways = 0 }) => ways > 0);
  const make = hand.pick(parted)?.id ?? hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'knitting', make });
  const now = page.inHand;
  if (!now) return hand.unchanged;
  const { open, left } = (await page.app.ways.waysOf(now.place)) ?? { open: [], left: [] };
  const chosen = hand.pick([...open, ...left]);
  if (chosen === undefined) return hand.unchanged;
  const { plan } = given(await page.store.plan(chosen.way.plan));
  hand.say(`${make} goes on at row ${chosen.rows} of ${chosen.total}`);
  await page.app.ways.goBy(now, chosen.way);
  const isDone = page.app.state.inHand.value?.place.plan === chosen.way.plan;
  const after = moved(truth, make, { rows: chosen.rows, print: fingerprint(plan) }, ['place']);
  return hand.ended(isDone, forgetting(after, make));
};
