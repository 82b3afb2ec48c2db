import * as v from 'valibot';
import { adjustablePaths } from '../../../knit/garment/adjust.ts';
import { bodyTableNames } from '../../../knit/garment/bodies.ts';
import type { Body } from '../../../knit/garment/design.ts';
import { fits } from '../../../knit/garment/ease.ts';
import { armholeKinds } from '../../../knit/garment/kinds/armholes.ts';
import { type GarmentKind, garmentKinds } from '../../../knit/garment/kinds/garments.ts';
import { neckShapes } from '../../../knit/garment/kinds/necks.ts';
import { fabric } from '../../../store/shapes/craft-shapes.ts';
import { shapeOf } from '../../../store/shapes/shape-of.ts';
import type { SizeSet } from '../../garments/size-set.ts';
import type { DesignForm, Person, SwatchForm } from '../design/form.ts';
import { list, number, text } from './plain-shapes.ts';

/** The shapes of a design as it is kept, of people's measures, and of the sizes it is passed on in. */

/** A figure as typed; an empty one is null, as JSON has it. */
const figure = v.nullable(number);
/** A measure of a body: one that was emptied is no number, which JSON has as null. */
const measured = v.pipe(
  figure,
  v.transform((mm) => mm ?? Number.NaN),
);

const body = shapeOf<Body>()(
  v.strictObject({
    chest: measured,
    waist: measured,
    hip: measured,
    crossBack: measured,
    napeToWrist: measured,
    napeToWaist: measured,
    arm: measured,
    upperArm: measured,
    wrist: measured,
    armholeDepth: measured,
    head: measured,
  }),
);

const swatch = shapeOf<SwatchForm>()(
  v.strictObject({
    fabric,
    stitches: figure,
    widthMm: figure,
    rows: figure,
    inRidges: v.boolean(),
    heightMm: figure,
    needle: figure,
    before: v.exactOptional(v.strictObject({ stitches: figure, rows: figure })),
    weighed: v.exactOptional(v.strictObject({ grams: figure, stitches: figure, rows: figure })),
  }),
);

/** A garment being designed, and what one was designed from. */
export const designForm = shapeOf<DesignForm>()(
  v.strictObject({
    version: v.picklist([1, 2, 3, 4, 5, 6, 7] as const),
    name: text,
    choices: v.strictObject({
      kind: v.picklist(Object.keys(garmentKinds) as GarmentKind[]),
      armhole: v.picklist(armholeKinds),
      neck: v.picklist(neckShapes),
      fit: v.picklist(fits),
    }),
    person: v.strictObject({
      name: v.exactOptional(text),
      table: v.exactOptional(v.picklist(bodyTableNames)),
      size: v.exactOptional(text),
    }),
    body,
    fabric,
    swatches: list(swatch),
    own: v.record(text, v.union([text, figure])),
    overruled: list(text),
  }),
);

/** People whose measures are kept. */
export const person = shapeOf<Person>()(v.strictObject({ name: text, body }));

/** The sizes in which a garment is passed on. */
export const sizeSet = shapeOf<SizeSet>()(
  v.strictObject({
    version: v.literal(1),
    table: v.picklist(bodyTableNames),
    sizes: list(text),
    people: list(person),
    adjusted: list(
      v.strictObject({ path: v.picklist(adjustablePaths), mm: number, size: v.exactOptional(text) }),
    ),
  }),
);
