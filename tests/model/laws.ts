import { isDeepStrictEqual } from 'node:util';
import { planRecords } from '../../src/app/garments/plan-records.ts';
import { makeKey } from '../../src/progress/log.ts';
import { waysIn } from '../../src/progress/ways.ts';
import { importBackup } from '../../src/store/backup/import.ts';
import { readBackup } from '../../src/store/backup/read.ts';
import { grouped } from '../../src/store/grouped.ts';
import type { GarmentRecord, PieceRecord, PlaceRecord } from '../../src/store/records.ts';
import { freshStore, given } from '../store/scenario.ts';
import { told } from '../told.ts';
import { difference, printOf } from './agrees.ts';
import { type BoxSeen, fingerprint, seeBox } from './box-seen.ts';
import type { Device } from './device.ts';
import type { Page } from './page.ts';
import { factsOf } from './truth.ts';

/** What holds in every box after every deed. Each law answers with what is wrong, or undefined. */

/** Every make of every garment has a place, and there are no others. */
export function everyMakeHasAPlace({ garments, places }: BoxSeen): string | undefined {
  const wanted = [...garments.values()].flatMap((garment) => makesOf(garment)).sort();
  const found = [...places.keys()].sort();
  return isDeepStrictEqual(found, wanted) ? undefined : `places ${found.join()} for makes ${wanted.join()}`;
}

const makesOf = (garment: GarmentRecord): string[] =>
  garment.pieces.flatMap(({ id: piece, recipe }) =>
    recipe.parts.flatMap((_, part) =>
      Array.from({ length: recipe.makes }, (_none, i) =>
        makeKey({ garment: garment.id, piece, part, make: i + 1 }),
      ),
    ),
  );

/** A place is a row of a plan of its own part, which its log names. */
export function placesFitTheirPlans(box: BoxSeen): string | undefined {
  for (const place of box.places.values()) {
    const wrong = misfit(place, box);
    if (wrong !== undefined) return `place ${JSON.stringify(place)}: ${wrong}`;
  }
  return undefined;
}

function misfit(place: PlaceRecord, box: BoxSeen): string | undefined {
  const plan = box.plans.get(place.plan);
  if (plan === undefined) return 'its plan is not there';
  if (plan.garment !== place.garment || plan.piece !== place.piece || plan.part !== place.part)
    return 'its plan is of another part';
  if (plan.plan.rows.length !== place.total) return `its plan has ${plan.plan.rows.length} rows`;
  if (place.rows < 0 || place.rows > place.total) return 'its row is outside its plan';
  const entries = [...box.log.values()].filter(({ make }) => make === place.id);
  if (entries.length === 0) return place.rows === 0 && place.seq === 0 ? undefined : 'nothing was logged';
  if (!entries.some((entry) => entry.plan === place.plan)) return 'no entry names its plan';
  const last = Math.max(...entries.map(({ seq }) => seq));
  return last === place.seq ? undefined : `its log goes on to ${last}`;
}

/** Where devices went other ways, the place says that there are some. */
export function placesTellOfWays({ places, log }: BoxSeen): string | undefined {
  const logs = grouped([...log.values()], ({ make }) => make);
  for (const { id, ways = 0 } of places.values()) {
    const { open } = waysIn(logs.get(id) ?? []);
    if (open.length > 0 && ways === 0) return `place ${id} does not tell of ${JSON.stringify(open)}`;
  }
  return undefined;
}

const planned = new Map<string, readonly string[]>();

/** The rows of each part of a piece, as the planner makes them of its recipe. */
function rowsOf(piece: PieceRecord, mirror: boolean): readonly string[] {
  const key = JSON.stringify([piece.recipe, mirror]);
  const known = planned.get(key);
  if (known) return known;
  const garment = { id: 'g', name: 'g', createdAt: 0, changedAt: 0, pieces: [piece] };
  const made = given(planRecords(garment)).filter((record) => record.mirror === mirror);
  const prints = made.map(({ plan }) => fingerprint(plan));
  if (planned.size > 500) planned.clear();
  planned.set(key, prints);
  return prints;
}

/** The plans of a piece that nobody has begun are those of its recipe. */
export function unbegunPlansAreTheirRecipes(box: BoxSeen): string | undefined {
  const begun = new Set([...box.places.values()].filter(({ seq }) => seq > 0).map(pieceOf));
  for (const garment of box.garments.values()) {
    for (const piece of garment.pieces) {
      if (begun.has(`${garment.id}/${piece.id}`)) continue;
      const places = [...box.places.values()].filter(
        (place) => pieceOf(place) === `${garment.id}/${piece.id}`,
      );
      for (const { id, part, make, plan } of places) {
        const wanted = rowsOf(piece, piece.recipe.mirrored === true && make % 2 === 0)[part];
        if (printOf(box, plan) !== wanted)
          return `${id} is to be knitted by ${plan}, which is not its recipe's`;
      }
    }
  }
  return undefined;
}

const pieceOf = ({ garment, piece }: { readonly garment: string; readonly piece: string }): string =>
  `${garment}/${piece}`;

/** What a page shows is what is stored. */
export function shownIsStored(page: Page, box: BoxSeen): string | undefined {
  const shown = page.inHand;
  const { at } = page;
  if (at.screen === 'knitting' || at.screen === 'count') {
    const place = box.places.get(at.make);
    if (!shown) return place === undefined ? undefined : `${at.make} is not shown`;
    if (place === undefined) return `${shown.make} is shown, and there is no such make`;
    if (!isDeepStrictEqual(shown.place, place)) return `shown: ${difference(shown.place, place)}`;
    if (fingerprint(shown.part) !== printOf(box, place.plan)) return `${at.make} is shown by another plan`;
  }
  if (at.screen === 'garment') {
    const view = page.app.state.garmentShown.value;
    const record = box.garments.get(at.garment);
    if (!view || !record)
      return Boolean(view) === Boolean(record) ? undefined : 'a garment is shown that is not there';
    return isDeepStrictEqual(factsOf(view.garment), factsOf(record))
      ? undefined
      : `garment shown: ${difference(factsOf(view.garment), factsOf(record))}`;
  }
  return undefined;
}

/** A backup can be made of the box as it is, is read back, and makes an empty box the same. */
export async function canBeBackedUp(page: Page, box: BoxSeen, device: Device): Promise<string | undefined> {
  const made = await page.app.backup.makeBackup();
  if (!made.ok) return `no backup can be made: ${told(made.faults)}`;
  const read = readBackup(made.value.text);
  if (!read.ok) return `the backup is not read back: ${told(read.faults)}`;
  const other = await freshStore({ now: () => device.clock, keep: undefined });
  const restored = await importBackup(other.box, read.value, 'replace');
  if (!restored.ok) return `the backup is not taken in: ${told(restored.faults)}`;
  const again = await seeBox({ disk: { sound: other.factory }, name: other.name });
  other.close();
  return sameBoxes(again, box);
}

/**
 * Two boxes with the same garments, plans, log and places. When a place was touched is each device's own; that devices
 * went other ways is asked of the log where it is shown, a place says only that there may be some.
 */
export function sameBoxes(found: BoxSeen, wanted: BoxSeen): string | undefined {
  const plain = ({ garments, plans, log, places, photos }: BoxSeen) => ({
    photos: [...photos.keys()].sort(),
    garments: Object.fromEntries(garments),
    plans: Object.fromEntries(plans),
    log: Object.fromEntries(log),
    places: Object.fromEntries([...places].map(([key, place]) => [key, { ...place, touched: 0, ways: 0 }])),
  });
  const [a, b] = [plain(found), plain(wanted)];
  return isDeepStrictEqual(a, b) ? undefined : difference(a, b);
}
