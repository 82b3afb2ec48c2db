import * as v from 'valibot';
import type { Edit } from '../../../knit/making-up/edit.ts';
import type {
  GaugeForm,
  PieceForm,
  SectionForm,
  ShapingForm,
  StartForm,
} from '../../../knit/piece/form/form.ts';
import { turnWays } from '../../../knit/piece/turn-way.ts';
import type { GarmentId, PieceId } from '../../../progress/log.ts';
import {
  end,
  fabric,
  gauge,
  measuredGauge,
  role,
  sectionBeside,
} from '../../../store/shapes/craft-shapes.ts';
import { garmentRecord } from '../../../store/shapes/record-shapes.ts';
import { type Id, shapeOf } from '../../../store/shapes/shape-of.ts';
import type { Draft } from '../editor/draft.ts';
import type { GarmentForm } from '../editor/garment-form.ts';
import type { PatternDraft, ReadDesign } from '../pattern/draft.ts';
import { designForm, person, sizeSet } from './design-shapes.ts';
import { list, number, text } from './plain-shapes.ts';

/** The shapes of what is kept while it is typed, and of what a garment was made from: read before it is used. */

const part = v.picklist(['right', 'left', 'both'] as const);
const change = v.picklist(['decrease', 'increase'] as const);

const timing = { first: text, rhythm: list(v.strictObject({ every: text, times: text })) };

const shaping = shapeOf<ShapingForm>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.literal('edge'),
      edge: part,
      change,
      by: text,
      inset: text,
      lean: v.picklist(['mirrored', 'plain'] as const),
      ...timing,
    }),
    v.strictObject({ kind: v.literal('across'), change, stitches: text, row: text }),
    v.strictObject({ kind: v.literal('middle'), from: text, ...timing }),
    v.strictObject({
      kind: v.picklist(['bind off', 'cast on', 'turn'] as const),
      edge: part,
      first: text,
      every: text,
      groups: text,
      way: v.exactOptional(v.picklist(turnWays)),
    }),
  ]),
);

const section = shapeOf<SectionForm>()(
  v.strictObject({
    name: text,
    rows: text,
    fabric,
    needle: text,
    shaping: list(shaping),
    ...sectionBeside,
  }),
);

const start = shapeOf<StartForm>()(
  v.variant('kind', [
    v.strictObject({ kind: v.literal('cast on'), stitches: text }),
    v.strictObject({
      kind: v.literal('split'),
      part: text,
      stitches: text,
      edge: v.picklist(['right', 'left', 'middle'] as const),
    }),
    v.strictObject({
      kind: v.literal('pick up'),
      edges: list(v.strictObject({ along: text, stitches: text, held: v.exactOptional(v.boolean()) })),
    }),
  ]),
);

const gaugeForm = shapeOf<GaugeForm>()(
  v.strictObject({
    stitches: text,
    rows: text,
    fabric: v.exactOptional(fabric),
    needle: v.exactOptional(text),
  }),
);

const pieceForm = shapeOf<PieceForm>()(
  v.strictObject({
    name: text,
    makes: text,
    mirrored: v.exactOptional(v.boolean()),
    role: v.exactOptional(role),
    gauge: v.exactOptional(gaugeForm),
    gauges: v.exactOptional(v.record(fabric, gauge)),
    parts: list(
      v.strictObject({
        name: text,
        start,
        firstSide: v.exactOptional(v.picklist(['RS', 'WS'] as const)),
        selvedge: v.exactOptional(v.picklist(['plain', 'slipped'] as const)),
        sections: list(section),
        end,
      }),
    ),
  }),
);

const integer = v.pipe(v.number(), v.safeInteger());
const edit = shapeOf<Edit>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.literal('rows'),
      piece: text,
      makes: list(integer),
      part: text,
      section: integer,
      called: text,
      by: integer,
    }),
    v.strictObject({
      kind: v.literal('width'),
      piece: text,
      part: text,
      by: integer,
      fromTop: v.exactOptional(v.literal(true)),
    }),
    v.strictObject({
      kind: v.literal('shoulder'),
      piece: text,
      edges: list(v.picklist(['right', 'left'] as const)),
      by: integer,
      from: v.picklist(['neck', 'cast-on'] as const),
    }),
    v.strictObject({
      kind: v.literal('pick up'),
      piece: text,
      edges: list(v.strictObject({ at: integer, along: text, was: integer, now: integer })),
    }),
  ]),
);

const given = v.exactOptional(
  v.union([v.strictObject({ mm: v.nullable(number) }), v.strictObject({ count: v.nullable(number) })]),
);

const straightShape = v.strictObject({
  neck: v.picklist(['boat', 'V'] as const),
  given: v.strictObject({
    width: given,
    length: given,
    border: given,
    neckWidth: given,
    neckDepth: given,
    cuff: given,
    sleeveTop: given,
    sleeveLength: given,
  }),
});

const garmentForm = shapeOf<GarmentForm>()(
  v.strictObject({
    name: text,
    notes: text,
    yarn: v.strictObject({
      name: text,
      fibre: text,
      colour: text,
      dyeLot: text,
      grams: text,
      metres: text,
      balls: text,
    }),
    gauge: gaugeForm,
    needle: text,
    pieces: list(v.strictObject({ id: text as Id<PieceId>, form: pieceForm })),
    mends: v.exactOptional(list(edit)),
    shape: v.exactOptional(straightShape),
    like: v.exactOptional(v.strictObject({ garment: garmentRecord, ids: v.record(text, text) })),
  }),
);

/** A garment in the editor. */
const editorDraft = shapeOf<Draft>()(
  v.strictObject({
    version: v.picklist([1, 2] as const),
    garment: text as Id<GarmentId>,
    at: number,
    form: garmentForm,
    base: v.exactOptional(garmentRecord),
  }),
);

/** A pattern being copied in. */
const patternDraft = shapeOf<PatternDraft>()(
  v.strictObject({
    version: v.literal(1),
    name: text,
    text: v.string(),
    size: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
    gauge: v.strictObject({
      stitches: v.exactOptional(number),
      rows: v.exactOptional(number),
      fabric: v.exactOptional(fabric),
      needle: v.exactOptional(number),
    }),
  }),
);

/** How a copied garment's text was read. */
const readDesign = shapeOf<ReadDesign>()(
  v.strictObject({
    kind: v.literal('read'),
    version: v.literal(1),
    options: v.strictObject({
      size: v.exactOptional(v.pipe(v.number(), v.safeInteger(), v.minValue(0))),
      gauge: v.exactOptional(measuredGauge),
      stretches: v.exactOptional(v.record(text, number)),
      needle: v.exactOptional(number),
    }),
  }),
);

const shapes = { editorDraft, patternDraft, designForm, person, sizeSet, readDesign };

export type KeptName = keyof typeof shapes;
export type KeptValue<K extends KeptName> = v.InferOutput<(typeof shapes)[K]>;

/** The value where it is whole; as JSON would have it: what is undefined is not there. */
export function whole<K extends KeptName>(name: K, stored: unknown): KeptValue<K> | undefined {
  const read = v.safeParse(shapes[name] as v.GenericSchema, JSON.parse(JSON.stringify(stored)));
  return read.success ? (read.output as KeptValue<K>) : undefined;
}
