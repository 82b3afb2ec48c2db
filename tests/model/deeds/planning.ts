import { makeKey } from '../../../src/progress/log.ts';
import { fingerprint } from '../box-seen.ts';
import type { Deed } from '../hand.ts';
import { moved } from '../truth.ts';

const kinds = ['rows', 'accept', 'measured', 'neck', 'first', 'plain'] as const;

/** The rest of a part planned anew, as the page for it proposes. */
export const planAnew: Deed = async (hand) => {
  const make = hand.make();
  if (make === undefined) return hand.unchanged;
  await hand.at({ screen: 'count', make });
  const { page, truth } = hand;
  const { rework, count } = page.app;
  const now = page.inHand;
  if (!now) return hand.unchanged;
  const kind = hand.pick(kinds) ?? 'rows';
  const draft = {
    ...rework.draftFrom(now, new URLSearchParams()),
    kind,
    rows: 2 + hand.number(14),
    stitches: (now.part.rows[now.place.rows]?.before ?? 0) + (hand.pick([-2, -1, 1, 2]) ?? 0),
    height: 1 + hand.number(9),
    neck: 1 - hand.number(3),
  };
  const made = rework.proposed(now, draft);
  if (!made?.ok) return hand.unchanged;
  hand.say(`${make} at row ${now.place.rows} planned anew: ${kind} ${draft.rows}`);
  const isDone = await count.takePlans(made.value.parts);
  let after = { ...truth, written: [] } as typeof truth;
  const written: 'rework'[] = [];
  for (const { index, part } of made.value.parts) {
    const key = makeKey({ ...now.place, part: index });
    const was = after.makes.get(key);
    const print = fingerprint(part);
    if (was === undefined) continue;
    written.push('rework');
    after = moved(after, key, { rows: was.rows, print }, written);
  }
  return hand.ended(isDone, { ...after, written: undefined });
};
