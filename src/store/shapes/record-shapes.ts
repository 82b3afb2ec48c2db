import * as v from 'valibot';
import type { Swatch, Yarn } from '../../knit/piece/garment.ts';
import type { PlannedPart, PlannedRow, PlannedSection } from '../../knit/piece/planned.ts';
import type { PartRecipe, Recipe, Section, SectionLength } from '../../knit/piece/recipe.ts';
import { entryKinds, type LogEntry } from '../../progress/log.ts';
import type { GarmentRecord, PhotoRecord, PieceRecord, PlanRecord } from '../records.ts';
import {
  count,
  fabric,
  garmentEntries,
  LIMITS,
  longText,
  measure,
  own,
  part,
  recipe,
  type section,
  sectionLength,
  shortText,
  signedCount,
  steps,
  type swatch,
  type yarn,
} from './craft-shapes.ts';
import { jsonTrouble } from './json-guard.ts';

/** The shapes of what the store keeps, on the way out of a backup and before a garment is saved. */

const id = v.pipe(v.string(), v.regex(/^[\w-]{1,64}$/));
/** ids of plans, makes and entries, which are put together from others */
const longId = v.pipe(v.string(), v.regex(/^[\w./-]{1,200}$/));
const time = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1e14));
const length = v.pipe(v.number(), v.finite(), v.minValue(-1_000_000), v.maxValue(1_000_000));
const list = <T extends v.GenericSchema>(of: T, most: number) => v.pipe(v.array(of), v.maxLength(most));

/** Plain data that only its own part of the app reads: a design, a setting. */
export const plainJson = v.custom<unknown>(
  (value) =>
    value !== undefined && jsonTrouble(value, { depth: 12, values: 20_000, text: LIMITS.text }) === undefined,
  'plain data',
);

const piece = v.strictObject({ id, recipe });

export const garmentRecord = v.strictObject({
  ...garmentEntries,
  id,
  createdAt: time,
  changedAt: time,
  pieces: list(piece, LIMITS.parts),
  design: v.exactOptional(plainJson),
  texts: v.exactOptional(v.record(id, longText)),
  ticked: v.exactOptional(list(shortText, LIMITS.list)),
  taken: v.exactOptional(list(v.strictObject({ piece: shortText, make: count, grams: length }), LIMITS.list)),
  stripes: v.exactOptional(list(v.strictObject({ colour: shortText, rows: count }), LIMITS.list)),
});

const shapingMark = v.strictObject({
  kind: v.picklist(['edge', 'across', 'middle', 'bind off', 'cast on', 'turn'] as const),
  edge: v.picklist(['right', 'left', 'across', 'middle'] as const),
  by: signedCount,
});

const plannedRow = v.strictObject({
  n: count,
  side: v.picklist(['RS', 'WS'] as const),
  section: count,
  needle: measure,
  steps,
  before: count,
  after: count,
  shaping: list(shapingMark, LIMITS.sections),
  height: length,
});

const plannedSection = v.strictObject({
  name: shortText,
  fabric,
  needle: measure,
  first: signedCount,
  last: signedCount,
  own: v.exactOptional(own),
  length: v.exactOptional(sectionLength),
  onNeedle: v.exactOptional(count),
});

const plannedPart = v.strictObject({
  piece: shortText,
  name: shortText,
  from: part.entries.from,
  end: part.entries.end,
  setUp: steps,
  sections: list(plannedSection, LIMITS.sections),
  rows: list(plannedRow, LIMITS.list),
  start: count,
  left: count,
  base: length,
  offset: length,
  cells: list(v.strictObject({ width: measure, height: measure }), LIMITS.sections),
  parent: v.exactOptional(shortText),
  recipe: v.exactOptional(part),
});

export const planRecord = v.strictObject({
  id: longId,
  garment: id,
  piece: id,
  part: count,
  mirror: v.boolean(),
  version: count,
  plan: plannedPart,
});

export const logEntry = v.strictObject({
  id: longId,
  make: longId,
  seq: v.pipe(count, v.minValue(1)),
  at: time,
  kind: v.picklist(entryKinds),
  row: count,
  count: v.exactOptional(count),
  text: v.exactOptional(longText),
  plan: v.exactOptional(longId),
  undoes: v.exactOptional(longId),
});

/** A photo as text: pictures of pixels only, none that could carry a script. */
export const photoText = v.strictObject({
  id,
  garment: id,
  at: time,
  caption: v.exactOptional(longText),
  image: v.pipe(
    v.string(),
    v.maxLength(12_000_000),
    v.regex(/^data:image\/(?:png|jpeg|webp|gif|avif);base64,[A-Za-z0-9+/]*={0,2}$/),
    v.check((text) => (text.length - text.indexOf(',') - 1) % 4 === 0, 'base64'),
  ),
});

/** Fails to compile when a record learns a field that its shape would refuse: such a backup could not be read back. */
type Learned<T, Shape extends v.GenericSchema> =
  Exclude<keyof T, keyof v.InferOutput<Shape>> extends never ? true : never;
/** @proof */
export const learned: [
  Learned<GarmentRecord, typeof garmentRecord>,
  Learned<PieceRecord, typeof piece>,
  Learned<PlanRecord, typeof planRecord>,
  Learned<PlannedPart, typeof plannedPart>,
  Learned<PlannedRow, typeof plannedRow>,
  Learned<PlannedSection, typeof plannedSection>,
  Learned<Recipe, typeof recipe>,
  Learned<PartRecipe, typeof part>,
  Learned<Section, typeof section>,
  Learned<SectionLength, typeof sectionLength>,
  Learned<Swatch, typeof swatch>,
  Learned<Yarn, typeof yarn>,
  Learned<LogEntry, typeof logEntry>,
  Learned<PhotoRecord, typeof photoText>,
] = [true, true, true, true, true, true, true, true, true, true, true, true, true, true];
