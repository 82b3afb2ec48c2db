import * as v from 'valibot';
import type { PlannedPart, PlannedRow, PlannedSection, ShapingMark } from '../../knit/piece/planned.ts';
import type { Restriped, Stripe, Striped } from '../../knit/yarn/stripes.ts';
import { entryKinds, type GarmentId, type LogEntry, type PieceId, type PlanId } from '../../progress/log.ts';
import type {
  GarmentMarks,
  GarmentPart,
  GarmentRecord,
  GonePiece,
  PhotoRecord,
  PieceRecord,
  PlanRecord,
  RowNote,
} from '../records.ts';
import { stampShape } from '../uniting/stamp.ts';
import {
  count,
  end,
  fabric,
  garmentEntries,
  LIMITS,
  longText,
  measure,
  name,
  own,
  part as partRecipe,
  recipe,
  sectionLength,
  shortText,
  signedCount,
  start,
  steps,
} from './craft-shapes.ts';
import { jsonTrouble } from './json-guard.ts';
import { type Id, shapeOf } from './shape-of.ts';

/** The shapes of what the store keeps, on the way out of a backup and before a garment is saved. */

const id = v.pipe(v.string(), v.regex(/^[\w-]{1,64}$/));
/** ids of plans, makes and entries, which are put together from others: their form is looked at with the whole file (src/store/backup/hangs-together.ts) */
const longId = v.pipe(v.string(), v.regex(/^[\w./-]{1,200}$/));
const time = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1e14));
/** Numbered on and on: the box itself never comes to an end of them (what comes in is held lower, at the door). */
const running = v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(1e15));
const length = v.pipe(v.number(), v.finite(), v.minValue(-1_000_000), v.maxValue(1_000_000));
const list = <T extends v.GenericSchema>(of: T, most: number) => v.pipe(v.array(of), v.maxLength(most));

/** The largest garment that can be typed, and the longest text that a page can hold, lie far below. */
export const PLAIN = { depth: 40, values: 2_000_000, text: 12_000_000 } as const;

/** Plain data that only its own part of the app reads: a design, a setting, a garment that is being typed. */
export const plainJson = v.custom<unknown>(
  (value) => value !== undefined && jsonTrouble(value, PLAIN) === undefined,
);

/** 'draft ' and the garment's id is the longest that the app itself gives. */
export const settingName = v.pipe(v.string(), v.minLength(1), v.maxLength(200));

const piece = shapeOf<PieceRecord>()(
  v.strictObject({
    id: id as Id<PieceId>,
    recipe,
    plans: v.exactOptional(list(longId as Id<PlanId>, 2 * LIMITS.parts)),
  }),
);

const striped = shapeOf<Striped>()(
  v.strictObject({
    first: count,
    last: v.exactOptional(count),
    at: signedCount,
    back: v.exactOptional(v.literal(true)),
  }),
);

const stripes = list(shapeOf<Stripe>()(v.strictObject({ colour: shortText, rows: count })), LIMITS.list);

const restriped = list(
  shapeOf<Restriped>()(
    v.strictObject({ piece: id, make: count, part: count, row: count, at: count, stripes }),
  ),
  LIMITS.list,
);

/** Where and how a garment is striped. */
export const stripesEntries = {
  stripes: v.exactOptional(stripes),
  striped: v.exactOptional(v.record(id, striped)),
  restriped: v.exactOptional(restriped),
} as const;

/** Only what a browser opens outside the app as a page: no other scheme, no name or password in it. */
const address = v.pipe(v.string(), v.maxLength(2000), v.regex(/^https:\/\/[^\s@/\\]+(?:[/?#]\S*)?$/));

export const rowNotes = list(
  shapeOf<RowNote>()(
    v.strictObject({
      piece: shortText,
      part: shortText,
      row: count,
      text: v.exactOptional(longText),
      address: v.exactOptional(address),
    }),
  ),
  LIMITS.sections,
);

/** Everything of a garment that she can change. */
const fields = {
  ...garmentEntries,
  pieces: list(piece, LIMITS.parts),
  design: v.exactOptional(plainJson),
  sizes: v.exactOptional(plainJson),
  rowNotes: v.exactOptional(rowNotes),
  texts: v.exactOptional(v.record(id, longText)),
  ticked: v.exactOptional(list(shortText, LIMITS.list)),
  taken: v.exactOptional(list(v.strictObject({ piece: shortText, make: count, grams: length }), LIMITS.list)),
  ...stripesEntries,
} as const;

/** the name of one part of a garment, and when it was changed */
const partName = v.pipe(v.string(), v.maxLength(LIMITS.name + 50));
const stamp = v.pipe(v.string(), v.regex(stampShape));

const part = shapeOf<GarmentPart>()(
  v.strictObject({ ...fields, name: v.exactOptional(name), pieces: v.exactOptional(fields.pieces) }),
);
const gone = shapeOf<GonePiece>()(v.strictObject({ stamp, piece }));
const order = v.exactOptional(v.strictObject({ stamp, names: list(partName, LIMITS.list) }));

const marks = shapeOf<GarmentMarks>()(
  v.strictObject({
    base: stamp,
    at: v.exactOptional(v.record(partName, stamp)),
    seen: list(stamp, LIMITS.list),
    also: v.exactOptional(
      list(v.strictObject({ name: partName, stamp, of: v.exactOptional(part) }), LIMITS.list),
    ),
    gone: v.exactOptional(list(gone, LIMITS.list)),
    photosGone: v.exactOptional(list(v.strictObject({ stamp, id }), LIMITS.list)),
    shown: v.exactOptional(list(id, LIMITS.list)),
    order: v.exactOptional(
      v.strictObject({ pieces: order, yarns: order, ticked: order, byHand: order, taken: order }),
    ),
  }),
);

export const garmentRecord = shapeOf<GarmentRecord>()(
  v.strictObject({
    ...fields,
    id: id as Id<GarmentId>,
    createdAt: time,
    changedAt: time,
    marks: v.exactOptional(marks),
  }),
);

/** What no plan ever had (a turn in the middle) is let in as it always was: a backup opens for ever, and it is only drawn. */
const shapingMark = shapeOf<ShapingMark>()(
  v.pipe(
    v.strictObject({
      kind: v.picklist(['edge', 'across', 'middle', 'bind off', 'cast on', 'turn'] as const),
      edge: v.picklist(['right', 'left', 'across', 'middle'] as const),
      by: signedCount,
    }),
    v.transform((mark) => mark as ShapingMark),
  ),
);

const plannedRow = shapeOf<PlannedRow>()(
  v.strictObject({
    n: count,
    side: v.picklist(['RS', 'WS'] as const),
    section: count,
    needle: measure,
    steps,
    before: count,
    after: count,
    shaping: list(shapingMark, LIMITS.sections),
    height: length,
  }),
);

const plannedSection = shapeOf<PlannedSection>()(
  v.strictObject({
    name: shortText,
    fabric,
    needle: measure,
    first: signedCount,
    last: signedCount,
    own: v.exactOptional(own),
    length: v.exactOptional(sectionLength),
    onNeedle: v.exactOptional(count),
  }),
);

export const plannedPart = shapeOf<PlannedPart>()(
  v.strictObject({
    piece: shortText,
    name: shortText,
    from: start,
    end,
    setUp: steps,
    sections: list(plannedSection, LIMITS.sections),
    rows: list(plannedRow, LIMITS.list),
    start: count,
    left: count,
    base: length,
    offset: length,
    cells: list(v.strictObject({ width: measure, height: measure }), LIMITS.sections),
    parent: v.exactOptional(shortText),
    recipe: v.exactOptional(partRecipe),
  }),
);

export const planRecord = shapeOf<PlanRecord>()(
  v.strictObject({
    id: longId as Id<PlanId>,
    garment: id as Id<GarmentId>,
    piece: id as Id<PieceId>,
    part: count,
    mirror: v.boolean(),
    version: running,
    plan: plannedPart,
  }),
);

/** Who wrote it held each kind to what it says; what an older file says beside is let in, and read by nobody. */
export const logEntry = shapeOf<LogEntry>()(
  v.pipe(
    v.strictObject({
      id: longId,
      make: longId,
      seq: v.pipe(running, v.minValue(1)),
      at: time,
      kind: v.picklist(entryKinds),
      row: count,
      count: v.exactOptional(count),
      text: v.exactOptional(longText),
      beforeRow: v.exactOptional(v.pipe(count, v.minValue(1))),
      plan: v.exactOptional(longId),
      follows: v.exactOptional(longId),
      settles: v.exactOptional(list(longId, LIMITS.sections)),
      undoes: v.exactOptional(longId),
    }),
    v.transform((entry) => entry as unknown as LogEntry),
  ),
);

/** As it stands in a backup. */
type PhotoText = Omit<PhotoRecord, 'image'> & { readonly image: string };

/** A photo as text: pictures of pixels only, none that could carry a script. */
export const photoText = shapeOf<PhotoText>()(
  v.strictObject({
    id,
    garment: id as Id<GarmentId>,
    at: time,
    caption: v.exactOptional(longText),
    image: v.pipe(
      v.string(),
      v.maxLength(12_000_000),
      v.regex(/^data:image\/(?:png|jpeg|webp|gif|avif);base64,[A-Za-z0-9+/]*={0,2}$/),
      v.check((text) => (text.length - text.indexOf(',') - 1) % 4 === 0),
    ),
  }),
);
