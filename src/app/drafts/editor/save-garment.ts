import { fault, ok, type Result, refuse } from '../../../knit/fault.ts';
import type { LostStripes } from '../../../knit/yarn/stripes-again.ts';
import type { GarmentId } from '../../../progress/log.ts';
import type { Rework } from '../../../store/garment/rework.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import type { Store } from '../../../store/store.ts';
import { mendWrites } from '../../garments/mending.ts';
import { openGarment, readView } from '../../garments/open-garments.ts';
import { putNew } from '../../garments/save-new.ts';
import { garmentShown } from '../../state.ts';
import { store } from '../../store.ts';
import { type Draft, draftKey } from './draft.ts';
import { type Editor, editor, withBegun, writeDraft } from './editor.ts';
import type { GarmentForm } from './garment-form.ts';
import { changedElsewhere, type Elsewhere, isNothing, ontoStored } from './onto-stored.ts';
import { toSave } from './save.ts';

export interface SaveDone {
  readonly garment: GarmentId;
  /** names of the pieces that have faults: the draft keeps them */
  readonly waiting: readonly string[];
  /** what another window had changed, as far as she has not been told before */
  readonly elsewhere?: Elsewhere;
  /** stripes of the garment that it was begun like which have no row in it */
  readonly lost?: readonly LostStripes[];
}

interface Written extends SaveDone {
  readonly form: GarmentForm;
}

/** Another window may save in the moment between reading and writing, but not for ever. */
const TRIES = 4;

/** Saves what can be knitted. While a piece has faults the draft stays, from now on beside its garment. */
export async function saveGarment(now = Date.now()): Promise<Result<SaveDone>> {
  const at = editor.value;
  if (!at) return refuse(fault('nothing to save'));
  const open = await store();
  let written: Result<Written> | undefined;
  for (let tried = 0; tried < TRIES && written === undefined; tried += 1)
    written = await tryToSave(open, at, now);
  if (written === undefined) return refuse(fault('store-not-answering'));
  if (!written.ok) return written;
  const { form, ...done } = written.value;
  const base = done.waiting.length > 0 ? await open.garment(at.garment) : undefined;
  const draft: Draft = {
    version: 2,
    garment: at.garment,
    at: now,
    form,
    ...(base?.ok && { base: base.value }),
  };
  await writeDraft(draftKey(at.garment), base ? draft : null);
  if (at.key !== draftKey(at.garment)) await writeDraft(at.key, null);
  // the screen that comes next is not to show for a moment what stood before
  if (garmentShown.value?.garment.id === at.garment) await openGarment(at.garment);
  editor.value = undefined;
  return ok(done);
}

/** New plans of makes on the needles that go with what was changed; 'plan-moved' where they were knitted on meanwhile. */
async function reworksOf(
  open: Store,
  garment: GarmentId,
  { mends = [] }: GarmentForm,
): Promise<Result<readonly Rework[]>> {
  if (mends.length === 0) return ok([]);
  const view = await readView(open, garment);
  const writes = view ? mendWrites(view, mends) : undefined;
  return writes ? ok(writes.reworks) : refuse(fault('plan-moved'));
}

/** Undefined where the garment was changed after it was read: then it is read again. */
async function tryToSave(open: Store, at: Editor, now: number): Promise<Result<Written> | undefined> {
  // rows may have been knitted in another window since
  const places = await open.placesOf(at.garment);
  if (!places.ok) return places;
  const begun = new Set(places.value.filter((place) => place.seq > 0).map((place) => place.piece));
  const current = await open.garment(at.garment);
  const isNew = !current.ok && current.faults[0]?.code === 'no-such-garment' && at.old === undefined;
  if (!current.ok && !isNew) return current;
  const old = current.ok ? current.value : undefined;
  const base = at.old ?? old;
  const form = withBegun(base && old ? ontoStored(at.history.now, base, old) : at.history.now, old, begun);
  const saved = toSave({ form, id: at.garment, now, old, begun });
  if (saved === undefined) return refuse(fault('nothing to save'));
  let isStale = false;
  const change = (was: GarmentRecord) => {
    isStale = JSON.stringify(was) !== JSON.stringify(old);
    if (isStale) throw new Error('changed since it was read');
    return saved.onto(was);
  };
  const reworks = await reworksOf(open, at.garment, form);
  if (!reworks.ok) return reworks;
  const written: Result<unknown> = old
    ? reworks.value.length > 0
      ? await open.rework(reworks.value, { id: at.garment, change, plans: saved.plans })
      : await open.changeGarment(at.garment, change, saved.plans)
    : await putNew(saved.garment, { id: at.garment, now, plansOf: () => ok([...saved.plans]) });
  if (isStale) return undefined;
  if (!written.ok) return written;
  // saved the first time, although no answer came
  if (written.value === 'there') return undefined;
  const waiting = form.pieces.filter(({ id }) => saved.waiting.includes(id)).map((entry) => entry.form.name);
  const elsewhere = at.old && old && changedElsewhere(at.history.now, at.old, old);
  return ok({
    garment: at.garment,
    waiting,
    form,
    ...(elsewhere && !isNothing(elsewhere) && { elsewhere }),
    ...(saved.lost.length > 0 && { lost: saved.lost }),
  });
}
