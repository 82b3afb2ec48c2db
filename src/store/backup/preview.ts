import { ok, type Result } from '../../knit/fault.ts';
import { nextTask } from '../../pace/next-task.ts';
import { foldPlace } from '../../progress/fold.ts';
import { type GarmentId, type LogEntry, type MakeKey, makeKey } from '../../progress/log.ts';
import { waysIn } from '../../progress/ways.ts';
import type { Box } from '../box/box.ts';
import { grouped } from '../grouped.ts';
import type { GarmentRecord } from '../records.ts';
import { byGarment } from './by-garment.ts';
import { type OfGarment, readBox, type WholeBox } from './contents.ts';
import type { Backup, ImportMode } from './document.ts';
import { mergeBackups, photosGone } from './merge.ts';
import { namedByContent } from './named-by-content.ts';
import { byId, stableJson } from './stable.ts';

/** What reading a backup in would change. */
export interface Preview {
  /** those that would stay exactly as they are are left out */
  readonly garments: readonly GarmentChange[];
  readonly same: number;
  readonly photos: number;
}

export interface GarmentChange {
  readonly id: GarmentId;
  readonly name: string;
  readonly kind: 'new' | 'changed' | 'gone';
  /** log entries that would come in, and that would go */
  readonly entriesIn: number;
  readonly entriesOut: number;
  /** the recipe or what belongs to it would be another */
  readonly recipe: boolean;
  /** makes that are at another row here, in the file, or after it */
  readonly makes: readonly MakeChange[];
}

export interface MakeChange {
  readonly key: MakeKey;
  readonly piece: string;
  readonly part: string;
  readonly make: number;
  /** copies of the piece */
  readonly makes: number;
  /** rows worked here, in the file ('the other device is 6 rows further'), and after reading it in; undefined: not there */
  readonly here: number | undefined;
  readonly there: number | undefined;
  readonly after: number | undefined;
  /** where they are two ways, of which she will choose one: how long the plan of each is, in rows */
  readonly twoWays?: { readonly here: number; readonly there: number };
}

/** What reading in makes of one garment. */
export interface Deed {
  readonly id: GarmentId;
  readonly here: OfGarment | undefined;
  readonly after: Backup | undefined;
  /** undefined where nobody sees a difference: names of plans, times of changes */
  readonly change: GarmentChange | undefined;
}

/** Looks at the box and the file, and changes nothing. */
export async function previewImport(box: Box, file: Backup, mode: ImportMode): Promise<Result<Preview>> {
  const read = await readBox(box);
  if (!read.ok) return read;
  const { garments } = read.value;
  return ok(previewOf(await deedsOf(garments, byGarment(file), mode), garments, file));
}

type Here = WholeBox['garments'];

/** What has to be done, garment by garment, each in a task of its own. */
export async function deedsOf(
  here: Here,
  coming: ReadonlyMap<GarmentId, Backup>,
  mode: ImportMode,
): Promise<readonly Deed[]> {
  const deeds: Deed[] = [];
  for (const id of new Set([...here.keys(), ...coming.keys()])) {
    await nextTask();
    const deed = deedOf(id, here.get(id), coming.get(id), mode);
    if (deed !== undefined) deeds.push(deed);
  }
  return deeds;
}

/** undefined where the garment stays as it is */
export function deedOf(
  id: GarmentId,
  here: OfGarment | undefined,
  there: Backup | undefined,
  mode: ImportMode,
): Deed | undefined {
  const was = here?.backup;
  const after = mode === 'replace' ? there : was && there ? mergeBackups(was, there) : (was ?? there);
  // that plans get other names is nothing that anyone sees
  const now = mode === 'merge' && was ? namedByContent(was) : was;
  const change = changeOf(id, sliceOf(now), sliceOf(there), sliceOf(after));
  return change || differs(was, after) ? { id, here, after, change } : undefined;
}

export function previewOf(deeds: readonly Deed[], here: Here, file: Backup): Preview {
  const ids = new Set([...here.keys(), ...file.garments.map(({ id }) => id)]);
  const photos = new Set([...here.values()].flatMap((one) => one.photos.map(({ id }) => id)));
  const gone = takenAway(
    [...here.values()].flatMap(({ backup }) => backup.garments),
    deeds,
  );
  const changes = deeds.flatMap(({ change }) => change ?? []);
  return {
    garments: changes,
    same: ids.size - changes.length,
    photos: file.photos.filter(({ id }) => !photos.has(id) && !gone.has(id)).length,
  };
}

/** Ids of the photos that were taken away on any of the devices, once the garments of the box are what the deeds make of them. */
export function takenAway(garments: readonly GarmentRecord[], deeds: readonly Deed[]): ReadonlySet<string> {
  const now = new Map(garments.map((garment) => [garment.id, garment]));
  for (const { after } of deeds) for (const garment of after?.garments ?? []) now.set(garment.id, garment);
  return photosGone([...now.values()]);
}

const sorted = (items: readonly { readonly id: string }[] = []) => byId(items);

const differs = (was: Backup | undefined, after: Backup | undefined): boolean =>
  (['garments', 'plans', 'entries'] as const).some(
    (list) => stableJson(sorted(was?.[list])) !== stableJson(sorted(after?.[list])),
  );

interface Slice {
  readonly garment: Backup['garments'][number] | undefined;
  readonly plans: Backup['plans'];
  readonly entries: ReadonlyMap<string, readonly LogEntry[]>;
  readonly ids: ReadonlySet<string>;
}

const sliceOf = (backup: Backup | undefined): Slice => ({
  garment: backup?.garments[0],
  plans: backup?.plans ?? [],
  entries: grouped(backup?.entries ?? [], (entry) => entry.make),
  ids: new Set(backup?.entries.map((entry) => entry.id)),
});

function changeOf(id: GarmentId, here: Slice, there: Slice, after: Slice): GarmentChange | undefined {
  const garment = after.garment ?? here.garment;
  if (garment === undefined) return undefined;
  const recipe =
    stableJson(unmarked(here.garment)) !== stableJson(unmarked(after.garment)) ||
    stableJson(here.plans) !== stableJson(after.plans);
  const entriesIn = [...after.ids].filter((id) => !here.ids.has(id)).length;
  const entriesOut = [...here.ids].filter((id) => !after.ids.has(id)).length;
  if (!recipe && entriesIn === 0 && entriesOut === 0) return undefined;
  const kind = here.garment === undefined ? 'new' : after.garment === undefined ? 'gone' : 'changed';
  const makes = makesOf(here, there, after).filter(
    (make) => make.twoWays || make.here !== make.there || make.here !== make.after,
  );
  return { id, name: garment.name, kind, entriesIn, entriesOut, recipe, makes };
}

/** When its parts were changed, and of which plan a piece is, is nothing that anyone sees. */
const unmarked = (garment: Slice['garment']) =>
  garment && {
    ...garment,
    changedAt: 0,
    marks: undefined,
    pieces: garment.pieces.map(({ id, recipe }) => ({ id, recipe })),
  };

function makesOf(here: Slice, there: Slice, after: Slice): MakeChange[] {
  const garment = after.garment ?? here.garment;
  return (garment?.pieces ?? []).flatMap(({ id: piece, recipe }) =>
    recipe.parts.flatMap((part, index) =>
      Array.from({ length: recipe.makes }, (_, i) => {
        const key = makeKey({ garment: garment?.id ?? '', piece, part: index, make: i + 1 });
        const rows = (slice: Slice) =>
          slice.garment === undefined ? undefined : foldPlace(slice.entries.get(key) ?? []).rows;
        const at = {
          here: rows(here),
          there: rows(there),
          after: rows(after),
          ...twoWays(key, here, there, after),
        };
        return { key, piece: recipe.name, part: part.name, make: i + 1, makes: recipe.makes, ...at };
      }),
    ),
  );
}

function twoWays(key: MakeKey, here: Slice, there: Slice, after: Slice): Pick<MakeChange, 'twoWays'> {
  if (waysIn(after.entries.get(key) ?? []).open.length === 0) return {};
  const rowsOf = (slice: Slice) => {
    const { plan } = foldPlace(slice.entries.get(key) ?? []);
    return slice.plans.find(({ id }) => id === plan)?.plan.rows.length;
  };
  const [mine, theirs] = [rowsOf(here), rowsOf(there)];
  return mine === undefined || theirs === undefined ? {} : { twoWays: { here: mine, there: theirs } };
}
