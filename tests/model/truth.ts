import type { LogEntry, MakeKey } from '../../src/progress/log.ts';
import type { GarmentRecord } from '../../src/store/records.ts';
import { type BoxSeen, fingerprint } from './box-seen.ts';

/** How far a make is: rows worked, of which plan. */
export interface Standing {
  readonly rows: number;
  /** `fingerprint` of the plan */
  readonly print: string;
}

/** A make as she would tell of it herself. */
export interface MakeTruth extends Standing {
  /** where it stood before each change that still stands, the last one last */
  readonly before: readonly Standing[];
  /** whether `before` goes back to its cast-on */
  readonly isWhole: boolean;
}

/** What she wrote of a garment, without ids, times and whatever the box keeps for itself. */
export type Facts = Omit<GarmentRecord, 'id' | 'createdAt' | 'changedAt'>;

/** What has to be in a box, kept without any help of the app: changed by what she does and by nothing else. */
export interface Truth {
  readonly garments: ReadonlyMap<string, Facts>;
  readonly makes: ReadonlyMap<MakeKey, MakeTruth>;
  /** every entry that was ever seen in the log, by its id, as text */
  readonly log: ReadonlyMap<string, string>;
  /** the garment of each photo, by the photo's id */
  readonly photos: ReadonlyMap<string, string>;
  /** the same of photos that she took away; none of these comes back by uniting */
  readonly photosGone: ReadonlyMap<string, string>;
  /** which photos there are is not known after the deed */
  readonly loosePhotos?: boolean;
  /** makes of which only so much is known after the deed */
  readonly looseMakes: ReadonlyMap<MakeKey, (now: Standing) => boolean>;
  /** the same of garments */
  readonly looseFacts: ReadonlyMap<string, (now: Facts) => boolean>;
  /** kinds of the entries that the deed has written; undefined: any */
  readonly written?: readonly LogEntry['kind'][] | undefined;
}

export const nothingYet: Truth = {
  garments: new Map(),
  makes: new Map(),
  log: new Map(),
  photos: new Map(),
  photosGone: new Map(),
  looseMakes: new Map(),
  looseFacts: new Map(),
};

const ofTheBox: ReadonlySet<string> = new Set(['id', 'createdAt', 'changedAt', 'marks']);

/** Nothing written, whether it is missing or empty. */
const isNothing = (value: unknown): boolean =>
  value === undefined ||
  value === '' ||
  (typeof value === 'object' && value !== null && Object.keys(value).length === 0);

export function factsOf(record: GarmentRecord): Facts {
  const own = Object.entries(record).filter(([name, value]) => !ofTheBox.has(name) && !isNothing(value));
  const facts = {
    ...Object.fromEntries(own),
    // the names of their plans are the box's
    pieces: record.pieces.map(({ id, recipe }) => ({ id, recipe })),
    ...(record.ticked && record.ticked.length > 0 && { ticked: [...record.ticked].sort() }),
  };
  // as a backup would have it
  return JSON.parse(JSON.stringify(facts)) as Facts;
}

export const standingsIn = (box: BoxSeen): Map<MakeKey, Standing> =>
  new Map(
    [...box.places].map(([key, { rows, plan }]) => {
      const record = box.plans.get(plan);
      return [key, { rows, print: record === undefined ? 'none' : fingerprint(record.plan) }];
    }),
  );

const withMake = (truth: Truth, key: MakeKey, make: MakeTruth, written: Truth['written']): Truth => ({
  ...truth,
  makes: new Map(truth.makes).set(key, make),
  written,
});

/** The make moved to where it stands now, if that is another place. */
export function moved(truth: Truth, key: MakeKey, now: Standing, written: Truth['written']): Truth {
  const was = truth.makes.get(key);
  if (was === undefined) return truth;
  const isSame = was.rows === now.rows && was.print === now.print;
  const before = isSame ? was.before : [...was.before, { rows: was.rows, print: was.print }];
  return withMake(truth, key, { ...was, ...now, before }, written);
}

/** What lies before its place is not known any more. */
export const forgetting = (truth: Truth, key: MakeKey): Truth => {
  const was = truth.makes.get(key);
  return was ? withMake(truth, key, { ...was, before: [], isWhole: false }, truth.written) : truth;
};

/** Whether anything was ever logged of it. */
export const isBegun = ({ log }: Truth, key: MakeKey): boolean =>
  [...log.values()].some((text) => (JSON.parse(text) as LogEntry).make === key);

/** So many rows done, one after the other. */
export function knitted(truth: Truth, key: MakeKey, rows: number): Truth {
  let now: Truth = { ...truth, written: [] };
  for (let i = 0; i < rows; i += 1) {
    const was = now.makes.get(key);
    if (was === undefined) return now;
    now = moved(now, key, { rows: was.rows + 1, print: was.print }, [...(now.written ?? []), 'row']);
  }
  return now;
}

/** The last change of a make taken back; undefined where there is none. */
export function takenBack(truth: Truth, key: MakeKey): Truth | undefined {
  const was = truth.makes.get(key);
  const last = was?.before.at(-1);
  if (was === undefined) return undefined;
  if (last !== undefined)
    return withMake(truth, key, { ...was, ...last, before: was.before.slice(0, -1) }, undefined);
  return was.isWhole ? undefined : { ...truth, looseMakes: new Map([[key, () => true]]), written: undefined };
}

export const withFacts = (truth: Truth, id: string, change: (facts: Facts) => Facts): Truth => {
  const was = truth.garments.get(id);
  if (was === undefined) return truth;
  const now = JSON.parse(JSON.stringify(change(was))) as Facts;
  return { ...truth, garments: new Map(truth.garments).set(id, now), written: [] };
};
