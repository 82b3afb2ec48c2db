import { planRecords } from '../../../src/app/plan-records.ts';
import { uniteNotes } from '../../../src/app/unite-notes.ts';
import { given } from '../../store/scenario.ts';
import type { Deed } from '../hand.ts';
import { garmentOf } from '../page.ts';
import { factsOf, type Truth, withFacts } from '../truth.ts';

/** A garment that was drafted, typed, read or came in a link is put into the workbasket. */
export const beginGarment: Deed = async (hand) => {
  const { page, truth, world } = hand;
  const [from, at] = [hand.pick(world.wardrobe), page.device.now()];
  if (from === undefined || truth.garments.size >= 2) return hand.unchanged;
  const record = {
    ...from,
    id: `g${truth.garments.size}${hand.device.letter}${at % 1e7}`,
    createdAt: at,
    changedAt: at,
  };
  hand.say(`new garment ${record.id}`);
  const saved = await page.store.saveGarment(record, given(planRecords(record)));
  const garments = new Map(truth.garments).set(record.id, factsOf(record));
  return hand.ended(saved.ok, { ...truth, garments, written: [] });
};

export const without = (truth: Truth, id: string): Truth => {
  const others = <T>(map: ReadonlyMap<string, T>) =>
    new Map([...map].filter(([key]) => key !== id && garmentOf(key) !== id));
  const log = new Map(
    [...truth.log].filter(([, text]) => garmentOf((JSON.parse(text) as { make: string }).make) !== id),
  );
  return { ...truth, garments: others(truth.garments), makes: others(truth.makes), log, written: [] };
};

export const deleteGarment: Deed = async (hand) => {
  const id = hand.garment();
  if (id === undefined) return hand.unchanged;
  await hand.at({ screen: 'garment', garment: id });
  hand.say(`delete ${id}`);
  const isDone = await hand.page.app.garments.deleteGarment(id);
  return hand.ended(isDone, without(hand.truth, id));
};

/** Her own words at the foot of the garment's screen, as that keeps them. */
export const writeNotes: Deed = async (hand) => {
  const id = hand.garment();
  if (id === undefined) return hand.unchanged;
  await hand.at({ screen: 'garment', garment: id });
  const { page, truth } = hand;
  const began = page.app.state.garmentShown.value?.garment.notes ?? '';
  const word = `word${hand.number(1000)}`;
  const stored = truth.garments.get(id)?.notes ?? '';
  hand.say(`notes of ${id} and ${word}`);
  const isDone = await page.app.change.changeGarment(id, (now) => ({
    ...now,
    notes: uniteNotes(began, `${began} ${word}`, now.notes ?? ''),
  }));
  const after = withFacts(truth, id, (facts) => ({ ...facts, notes: `${began} ${word}` }));
  if (stored === began) return hand.ended(isDone, after);
  const both = (notes = '') => notes.includes(word) && notes.includes(stored.trim());
  return hand.ended(isDone, { ...after, looseFacts: new Map([[id, ({ notes }) => both(notes)]]) });
};

/** A step of the making up, ticked or not, as its screen does it. */
export const tickStep: Deed = async (hand) => {
  const id = hand.garment();
  if (id === undefined) return hand.unchanged;
  await hand.at({ screen: 'garment', garment: id });
  const step = `block 'piece ${hand.number(3)}'`;
  const on = hand.number(3) > 0;
  hand.say(`${on ? 'tick' : 'untick'} ${step} of ${id}`);
  const others = (ticked: readonly string[] = []) => ticked.filter((one) => one !== step);
  const tick = (ticked: readonly string[] | undefined) => (on ? [...others(ticked), step] : others(ticked));
  const isDone = await hand.page.app.change.changeGarment(id, (now) => ({
    ...now,
    ticked: tick(now.ticked),
  }));
  const after = withFacts(hand.truth, id, (facts) => {
    const ticked = tick(facts.ticked).sort();
    return { ...facts, ticked: ticked.length === 0 ? undefined : ticked } as typeof facts;
  });
  return hand.ended(isDone, after);
};
