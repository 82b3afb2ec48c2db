import { planRecords } from '../../../src/app/garments/plan-records.ts';
import { uniteNotes } from '../../../src/app/garments/unite-notes.ts';
import { addPhoto, deletePhoto } from '../../../src/store/garment/photos.ts';
import { dot } from '../../store/knitted-box.ts';
import { given } from '../../store/scenario.ts';
import type { Deed } from '../hand.ts';
import { garmentOf } from '../page.ts';
import { type Facts, factsOf, type Truth, withFacts } from '../truth.ts';

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
  const others = <K extends string, T>(map: ReadonlyMap<K, T>) =>
    new Map([...map].filter(([key]) => key !== id && garmentOf(key) !== id));
  const log = new Map(
    [...truth.log].filter(([, text]) => garmentOf((JSON.parse(text) as { make: string }).make) !== id),
  );
  const kept = (map: Truth['photos']) => new Map([...map].filter(([, garment]) => garment !== id));
  const [photos, photosGone] = [kept(truth.photos), kept(truth.photosGone)];
  const [garments, makes] = [others(truth.garments), others(truth.makes)];
  return { ...truth, garments, makes, log, photos, photosGone, written: [] };
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

/** A photo is taken, comes in the place of another, or is taken away. */
export const photograph: Deed = async (hand) => {
  const id = hand.garment();
  if (id === undefined) return hand.unchanged;
  const { truth } = hand;
  const { box } = hand.page.store;
  const own = [...truth.photos].filter(([, garment]) => garment === id).map(([photo]) => photo);
  const old = hand.number(3) === 0 ? undefined : hand.pick(own);
  const photos = new Map([...truth.photos].filter(([photo]) => photo !== old));
  const photosGone = old === undefined ? truth.photosGone : new Map(truth.photosGone).set(old, id);
  const after = { ...truth, photos, photosGone, written: [] };
  if (old !== undefined && hand.number(2) === 0) {
    hand.say(`photo ${old} taken away`);
    const gone = await deletePhoto(box, old);
    return hand.ended(gone.ok, after);
  }
  hand.say(`a photo of ${id} in place of ${old}`);
  const added = await addPhoto(box, id, dot(), { instead: old });
  // a page that was killed does not tell its name
  if (hand.page.dead) return [...hand.unchanged, { ...after, loosePhotos: true }];
  return hand.ended(added.ok, { ...after, photos: added.ok ? photos.set(added.value.id, id) : photos });
};

/** Tension, yarn or ease of the garment, or what a make weighed, as its own screens change it. */
export const changeFigures: Deed = async (hand) => {
  const id = hand.garment();
  if (id === undefined) return hand.unchanged;
  const n = hand.number(40);
  const change = hand.pick(figures) ?? weigh;
  hand.say(`${change.name} of ${id}: ${n}`);
  const isDone = await hand.page.app.change.changeGarment(id, (now) => ({ ...now, ...change(now, n) }));
  return hand.ended(
    isDone,
    withFacts(hand.truth, id, (facts) => ({ ...facts, ...change(facts, n) })),
  );
};

type Figures = Partial<Pick<Facts, 'taken' | 'yarns' | 'stripes'>>;

function weigh({ taken = [], pieces }: Facts, grams: number): Figures {
  const piece = pieces[0]?.recipe.name ?? 'Back';
  const others = taken.filter((one) => one.piece !== piece || one.make !== 1);
  return { taken: [...others, { piece, make: 1, grams: grams + 1 }] };
}

const wind = ({ yarns = [] }: Facts, n: number): Figures => ({
  yarns: [...yarns.filter(({ name }) => name !== `wool ${n % 3}`), { name: `wool ${n % 3}`, dyeLot: `${n}` }],
});

const stripe = (_: Facts, n: number): Figures => ({ stripes: [{ colour: 'blue', rows: 1 + n }] });

const figures = [weigh, wind, stripe];

/** A link is opened twice, as fast as it can be: what it brings is there once. */
export const linkTwice: Deed = async (hand) => {
  const { page, truth, world } = hand;
  const [from, at] = [hand.pick(world.wardrobe), page.device.now()];
  if (from === undefined || truth.garments.size >= 2) return hand.unchanged;
  const record = { ...from, id: `l${hand.device.letter}${at % 1e7}`, createdAt: at, changedAt: at };
  const plans = given(planRecords(record));
  const other = hand.device.page(1);
  hand.say(`a link with ${record.id}, opened twice`);
  const saved = await Promise.all([page, other].map(({ store }) => store.saveGarment(record, plans)));
  const garments = new Map(truth.garments).set(record.id, factsOf(record));
  return hand.ended(
    saved.some(({ ok }) => ok),
    { ...truth, garments, written: [] },
  );
};
