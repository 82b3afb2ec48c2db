import { isDeepStrictEqual } from 'node:util';
import type { MakeKey } from '../../src/progress/log.ts';
import type { BoxSeen } from './box-seen.ts';
import { garmentOf } from './page.ts';
import type { Facts, Standing, Truth } from './truth.ts';

/** What is true of a box after something came into it, or was taken back. */

const isAt = (one: Standing | undefined, now: Standing): boolean =>
  one !== undefined && one.rows === now.rows && one.print === now.print;

/** Two boxes as one: every entry of both, every garment, and each make as one of the two had it. */
export function united(a: Truth, b: Truth): Truth {
  const makes = new Map([...b.makes, ...a.makes]);
  const garments = new Map([...b.garments, ...a.garments]);
  const looseMakes = new Map(
    [...makes.keys()].map((key) => [
      key,
      (now: Standing) => [a, b].some((one) => isAt(one.makes.get(key), now)),
    ]),
  );
  const looseFacts = new Map(
    [...garments.keys()].map((id) => [
      id,
      (now: Facts) =>
        holdsBoth(
          now,
          [a, b].map((one) => one.garments.get(id)),
        ),
    ]),
  );
  const photosGone = new Map([...a.photosGone, ...b.photosGone]);
  const photos = new Map([...a.photos, ...b.photos].filter(([id]) => !photosGone.has(id)));
  const log = new Map([...b.log, ...a.log]);
  return { garments, makes, log, photos, photosGone, looseMakes, looseFacts, written: [] };
}

/** What only one device knows of is there as that one knows it. */
function holdsBoth(now: Facts, [a, b]: readonly (Facts | undefined)[]): boolean {
  if (a === undefined || b === undefined || isDeepStrictEqual(a, b)) return isDeepStrictEqual(now, a ?? b);
  return true;
}

/** A backup that came in: what was true before and after it, and the box with it. */
export interface Import {
  readonly before: Truth;
  readonly after: Truth;
  readonly box: BoxSeen;
}

/** What an import has changed undone, and nothing else: what was done since stays. */
export function takenBackImport(now: Truth, came: Import, box: BoxSeen): Truth {
  const { before, after } = came;
  const garments = new Map(now.garments);
  const looseFacts = new Map<string, (now: Facts) => boolean>();
  const staying = new Set<string>();
  for (const id of new Set([...before.garments.keys(), ...after.garments.keys()])) {
    const was = before.garments.get(id);
    // what she deleted since does not come back
    if (!now.garments.has(id) && after.garments.has(id)) continue;
    // one that was saved again with nothing changed has been touched too
    const isSaved = came.box.garments.get(id)?.changedAt !== box.garments.get(id)?.changedAt;
    const isUntouched = !isSaved && isDeepStrictEqual(logOf(after, id), logOf(now, id));
    if (was !== undefined) garments.set(id, was);
    else if (isUntouched) garments.delete(id);
    else staying.add(id);
    if (!isUntouched) looseFacts.set(id, () => true);
  }
  const log = new Map(
    [...before.log, ...now.log].filter(([id, text]) => {
      const garment = garmentIn(text);
      const isSince = !after.log.has(id);
      return garments.has(garment) && (staying.has(garment) || before.log.has(id) || isSince);
    }),
  );
  return {
    garments,
    makes: makesBack(now, came, garments),
    log,
    photos: now.photos,
    photosGone: now.photosGone,
    loosePhotos: true,
    looseFacts,
    looseMakes: looseBack(now, came),
    written: [],
  };
}

const makesBack = (now: Truth, { before }: Import, garments: Truth['garments']): Truth['makes'] =>
  new Map([...now.makes, ...before.makes].filter(([key]) => garments.has(garmentOf(key))));

/** A make of which nothing was logged since is where it was; how far another is, the log says. */
function looseBack(now: Truth, { before, after }: Import): Truth['looseMakes'] {
  const since = new Set([...now.log].filter(([id]) => !after.log.has(id)).map(([, text]) => makeIn(text)));
  return new Map(
    [...now.makes.keys(), ...before.makes.keys()].map((key) => [
      key,
      (at: Standing) => since.has(key) || !before.makes.has(key) || isAt(before.makes.get(key), at),
    ]),
  );
}

const makeIn = (text: string): MakeKey => (JSON.parse(text) as { readonly make: MakeKey }).make;

const garmentIn = (text: string): string => garmentOf(makeIn(text));

const logOf = ({ log }: Truth, garment: string): readonly string[] =>
  [...log.keys()].filter((id) => garmentIn(log.get(id) ?? '') === garment).sort();
