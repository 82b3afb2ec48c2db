import * as v from 'valibot';
import { fabricNames } from '../../knit/fabric.ts';
import type { Gauge } from '../../knit/gauge.ts';
import {
  freeEdges,
  type HandSeam,
  type Joint,
  type Stretch,
  seamKinds,
  seamWays,
} from '../../knit/making-up/joint.ts';
import type { MeasuredGauge } from '../../knit/measured-gauge.ts';
import { MOST_PARTS, MOST_ROWS, MOST_SECTIONS } from '../../knit/piece/check-recipe.ts';
import type { Swatch, Yarn } from '../../knit/piece/garment.ts';
import {
  type PartRecipe,
  type PartStart,
  pieceRoles,
  type Recipe,
  type Section,
  type SectionLength,
  type Shaping,
} from '../../knit/piece/recipe.ts';
import { turnWays } from '../../knit/piece/turn-way.ts';
import type { Step } from '../../knit/row/step.ts';
import { stepWeight } from '../../knit/row/step-weight.ts';
import { stitchNames } from '../../knit/stitch.ts';
import { shapeOf } from './shape-of.ts';

/**
 * The one door for foreign garments (backup, link, file): only whole values of these shapes come in. Limits keep a
 * hostile file from asking for endless rows; strict objects refuse keys that are not ours, `__proto__` among them.
 */

export const LIMITS = {
  name: 200,
  text: 20_000,
  /** of several devices together */
  notes: 100_000,
  parts: MOST_PARTS,
  sections: MOST_SECTIONS,
  list: MOST_ROWS,
  steps: 500,
  depth: 6,
} as const;

export const name = v.pipe(v.string(), v.minLength(1), v.maxLength(LIMITS.name));
export const shortText = v.pipe(v.string(), v.maxLength(LIMITS.name));
export const longText = v.pipe(v.string(), v.maxLength(LIMITS.text));
const percent = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1_000));
export const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0), v.maxValue(100_000));
export const signedCount = v.pipe(v.number(), v.safeInteger(), v.minValue(-100_000), v.maxValue(100_000));
export const measure = v.pipe(v.number(), v.finite(), v.gtValue(0), v.maxValue(1_000_000));

/** mm above the cast-on */
const height = v.pipe(v.number(), v.finite(), v.minValue(0), v.maxValue(1_000_000));

const list = <T extends v.GenericSchema>(of: T, most: number = LIMITS.list) =>
  v.pipe(v.array(of), v.maxLength(most));

const work = v.picklist(stitchNames);
const until = v.strictObject({ left: count });

/** Steps nest a few deep; a deeper one is no row that anyone could follow. */
const stepShape = (depth: number): v.GenericSchema<unknown, Step> => {
  const plain = [v.strictObject({ work, times: count }), v.strictObject({ work, until })] as const;
  if (depth === 0) return v.union([...plain]);
  const inner = list(
    v.lazy(() => stepShape(depth - 1)),
    LIMITS.steps,
  );
  return shapeOf<Step>()(
    v.union([
      ...plain,
      v.strictObject({ repeat: inner, times: count }),
      v.strictObject({ repeat: inner, until }),
    ]),
  );
};

/** No row is worked on so many stitches, nor takes so many steps: nested repeats could ask for them without end. */
const MOST_ON_NEEDLE = 2_000;
const HEAVIEST_ROW = 200_000;

export const end = v.picklist(['bind off', 'hold', 'split'] as const);

export const steps = v.pipe(
  v.array(stepShape(LIMITS.depth)),
  v.maxLength(LIMITS.steps),
  v.check((row) => stepWeight(row, MOST_ON_NEEDLE) <= HEAVIEST_ROW),
);

export const gauge = shapeOf<Gauge>()(v.strictObject({ stitches: measure, rows: measure }));
export const fabric = v.picklist(fabricNames);
export const measuredGauge = shapeOf<MeasuredGauge>()(
  v.strictObject({
    stitches: measure,
    rows: measure,
    fabric: v.exactOptional(fabric),
    needle: v.exactOptional(measure),
  }),
);
const edge = v.picklist(['right', 'left'] as const);
const groups = list(v.strictObject({ row: count, stitches: count }));

const shaping = shapeOf<Shaping>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.literal('edge'),
      edge: v.picklist(['right', 'left', 'both'] as const),
      by: signedCount,
      rows: list(count),
      inset: count,
      lean: v.picklist(['mirrored', 'plain'] as const),
    }),
    v.strictObject({ kind: v.literal('across'), row: count, by: signedCount }),
    v.strictObject({ kind: v.literal('middle'), rows: list(count), from: count }),
    v.strictObject({ kind: v.literal('bind off'), edge, groups }),
    v.strictObject({ kind: v.literal('cast on'), edge, groups }),
    v.strictObject({ kind: v.literal('turn'), edge, groups, way: v.exactOptional(v.picklist(turnWays)) }),
  ]),
);

/** the pattern's own words, by row number */
export const own = v.record(v.pipe(v.string(), v.regex(/^[1-9]\d{0,4}$/)), longText);

export const sectionLength = shapeOf<SectionLength>()(
  v.strictObject({
    id: shortText,
    mm: v.exactOptional(height),
    from: shortText,
    endSide: v.exactOptional(v.picklist(['RS', 'WS'] as const)),
    open: v.boolean(),
  }),
);

/** What of a section no field of the editor shows. */
export const sectionBeside = {
  words: v.exactOptional(list(steps)),
  own: v.exactOptional(own),
  length: v.exactOptional(sectionLength),
  onNeedle: v.exactOptional(count),
  measured: v.exactOptional(v.strictObject({ rowMm: measure, atMm: v.exactOptional(height) })),
} as const;

export const section = shapeOf<Section>()(
  v.strictObject({
    name: shortText,
    rows: count,
    fabric,
    needle: measure,
    shaping: list(shaping),
    ...sectionBeside,
  }),
);

export const start = shapeOf<PartStart>()(
  v.union([
    v.strictObject({ castOn: count }),
    v.strictObject({ part: name, stitches: count, edge: v.picklist(['right', 'left', 'middle'] as const) }),
    v.strictObject({
      pickUp: list(
        v.strictObject({ along: shortText, stitches: count, held: v.exactOptional(v.boolean()) }),
        LIMITS.sections,
      ),
    }),
  ]),
);

export const part = shapeOf<PartRecipe>()(
  v.strictObject({
    name,
    from: start,
    firstSide: v.exactOptional(v.picklist(['RS', 'WS'] as const)),
    selvedge: v.exactOptional(v.picklist(['plain', 'slipped'] as const)),
    sections: list(section, LIMITS.sections),
    end,
  }),
);

export const role = v.picklist(pieceRoles);

export const recipe = shapeOf<Recipe>()(
  v.strictObject({
    name,
    makes: count,
    mirrored: v.exactOptional(v.boolean()),
    role: v.exactOptional(role),
    gauge: v.exactOptional(measuredGauge),
    gauges: v.exactOptional(v.record(fabric, gauge)),
    parts: list(part, LIMITS.parts),
  }),
);

export const swatch = shapeOf<Swatch>()(
  v.strictObject({
    fabric,
    stitches: measure,
    widthMm: measure,
    rows: measure,
    heightMm: measure,
    needle: measure,
    before: v.exactOptional(
      v.strictObject({ stitches: measure, widthMm: measure, rows: measure, heightMm: measure }),
    ),
    weighed: v.exactOptional(v.strictObject({ grams: measure, stitches: measure, rows: measure })),
  }),
);

export const yarn = shapeOf<Yarn>()(
  v.strictObject({
    name: shortText,
    fibre: v.exactOptional(shortText),
    colour: v.exactOptional(shortText),
    dyeLot: v.exactOptional(shortText),
    grams: v.exactOptional(measure),
    metres: v.exactOptional(measure),
    balls: v.exactOptional(count),
    strands: v.exactOptional(count),
  }),
);

const stretch = shapeOf<Stretch>()(
  v.strictObject({
    piece: shortText,
    make: count,
    part: shortText,
    edge: v.picklist(['start', 'top', 'right', 'left'] as const),
    sections: v.exactOptional(list(shortText, LIMITS.sections)),
    rows: v.exactOptional(v.strictObject({ first: count, last: count })),
    level: v.exactOptional(v.picklist(['only', 'without'] as const)),
    shaped: v.exactOptional(v.picklist(['before', 'after'] as const)),
    stitches: v.exactOptional(v.strictObject({ from: count, to: count })),
    reversed: v.exactOptional(v.literal(true)),
  }),
);
const line = list(stretch, LIMITS.sections);

/** One step of the making up. */
export const joint = shapeOf<Joint>()(
  v.variant('kind', [
    v.strictObject({
      kind: v.literal('seam'),
      of: v.picklist(seamKinds),
      a: line,
      b: line,
      how: v.picklist(seamWays),
      ease: v.exactOptional(v.pipe(v.number(), v.finite(), v.minValue(-100), v.maxValue(100))),
      byHand: v.exactOptional(shortText),
    }),
    v.strictObject({
      kind: v.literal('pick up'),
      piece: shortText,
      make: count,
      along: list(
        v.strictObject({ line, stitches: count, percent: v.exactOptional(percent) }),
        LIMITS.sections,
      ),
    }),
    v.strictObject({ kind: v.literal('left free'), line, as: v.picklist(freeEdges) }),
  ]),
);

const handSeam = shapeOf<HandSeam>()(
  v.strictObject({ id: shortText, a: line, b: line, how: v.picklist(seamWays) }),
);

/** Everything of a garment but its pieces. */
export const garmentEntries = {
  name,
  swatches: v.exactOptional(list(swatch, LIMITS.sections)),
  yarns: v.exactOptional(list(yarn, LIMITS.sections)),
  joints: v.exactOptional(list(joint, LIMITS.sections)),
  byHand: v.exactOptional(list(handSeam, LIMITS.sections)),
  notes: v.exactOptional(v.pipe(v.string(), v.maxLength(LIMITS.notes))),
  credits: v.exactOptional(longText),
  licence: v.exactOptional(shortText),
} as const;
