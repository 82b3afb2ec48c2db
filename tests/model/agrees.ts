import { isDeepStrictEqual } from 'node:util';
import type { MakeKey } from '../../src/progress/log.ts';
import { type BoxSeen, fingerprint } from './box-seen.ts';
import { type Facts, factsOf, type MakeTruth, type Standing, standingsIn, type Truth } from './truth.ts';

/** In what a box is not what it has to be, in a line; undefined where it is. */
export function disagreement(truth: Truth, box: BoxSeen): string | undefined {
  return inGarments(truth, box) ?? inMakes(truth, box) ?? inLog(truth, box) ?? inPhotos(truth, box);
}

function inGarments(truth: Truth, box: BoxSeen): string | undefined {
  const ids = new Set([...truth.garments.keys(), ...box.garments.keys()]);
  for (const id of ids) {
    const record = box.garments.get(id);
    const found = record && factsOf(record);
    const wanted = truth.garments.get(id);
    const loose = truth.looseFacts.get(id);
    const agrees = loose && found ? loose(found) : isDeepStrictEqual(found, wanted);
    if (!agrees) return `garment ${id}: ${difference(found, wanted)}`;
  }
  return undefined;
}

function inPhotos({ photos, loosePhotos }: Truth, box: BoxSeen): string | undefined {
  const [found, wanted] = [[...box.photos.keys()], [...photos.keys()]].map((ids) => ids.sort().join());
  return loosePhotos || found === wanted ? undefined : `photos are ${found}, were to be ${wanted}`;
}

/** Where two things differ, and what stands there. */
export function difference(found: unknown, wanted: unknown, at = ''): string {
  const isOpen = (one: unknown): one is Record<string, unknown> => typeof one === 'object' && one !== null;
  if (!isOpen(found) || !isOpen(wanted))
    return `${at} is ${JSON.stringify(found)?.slice(0, 120)}, was to be ${JSON.stringify(wanted)?.slice(0, 120)}`;
  const names = [...new Set([...Object.keys(found), ...Object.keys(wanted)])];
  const name = names.find((one) => !isDeepStrictEqual(found[one], wanted[one]));
  return name === undefined
    ? `${at} is as loosely told`
    : difference(found[name], wanted[name], `${at}.${name}`);
}

const said = ({ rows, print }: Standing): string => `row ${rows} of ${print.length}:${print.slice(-60)}`;

function inMakes(truth: Truth, box: BoxSeen): string | undefined {
  const standings = standingsIn(box);
  const begun = new Set([...box.log.values()].map(({ make }) => make));
  for (const [key, make] of truth.makes) {
    if (!begun.has(key)) continue;
    const now = standings.get(key);
    if (now === undefined) return `make ${key} is gone, with ${make.rows} rows`;
    const loose = truth.looseMakes.get(key);
    const agrees = loose ? loose(now) : now.rows === make.rows && now.print === make.print;
    if (!agrees) return `make ${key} is at ${said(now)}, was to be at ${said(make)}`;
  }
  return undefined;
}

function inLog(truth: Truth, box: BoxSeen): string | undefined {
  for (const [id, text] of truth.log) {
    const found = box.log.get(id);
    if (found === undefined) return `entry ${text} is gone`;
    if (JSON.stringify(found) !== text) return `entry ${text} is now ${JSON.stringify(found)}`;
  }
  const fresh = [...box.log.values()].filter(({ id }) => !truth.log.has(id));
  const kinds = fresh.sort((a, b) => a.seq - b.seq).map(({ kind }) => kind);
  const { written } = truth;
  if (written === undefined || isDeepStrictEqual([...kinds].sort(), [...written].sort())) return undefined;
  return `the log has got ${JSON.stringify(fresh)}, was to get ${JSON.stringify(written)}`;
}

/** The truth once a box was found to agree with it: what it left open is as it was found. */
export function settled(truth: Truth, box: BoxSeen): Truth {
  const begun = new Set([...box.log.values()].map(({ make }) => make));
  const makes = new Map<MakeKey, MakeTruth>();
  for (const [key, now] of standingsIn(box)) {
    const known = truth.makes.get(key);
    const fresh = { ...now, before: [], isWhole: !begun.has(key) };
    makes.set(key, known && begun.has(key) && !truth.looseMakes.has(key) ? { ...known, ...now } : fresh);
  }
  const garments = new Map([...box.garments].map(([id, record]): [string, Facts] => [id, factsOf(record)]));
  const log = new Map([...box.log].map(([id, entry]) => [id, JSON.stringify(entry)]));
  const photos = new Map([...box.photos].map(([id, { garment }]) => [id, garment]));
  const photosGone = truth.loosePhotos ? goneIn(box) : truth.photosGone;
  return { garments, makes, log, photos, photosGone, looseMakes: new Map(), looseFacts: new Map() };
}

const goneIn = ({ garments }: BoxSeen): Truth['photosGone'] =>
  new Map(
    [...garments.values()].flatMap(({ id, marks }) =>
      (marks?.photosGone ?? []).map((photo) => [photo.id, id] as const),
    ),
  );

export const printOf = (box: BoxSeen, plan: string): string => {
  const record = box.plans.get(plan);
  return record === undefined ? 'none' : fingerprint(record.plan);
};
