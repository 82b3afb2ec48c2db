import type { FabricName } from '../../../knit/fabric.ts';
import { factsOf } from '../../../knit/fabric-facts.ts';
import { withFigure } from '../../../knit/garment/adjust.ts';
import { type BodyTable, bodyOfSize } from '../../../knit/garment/bodies.ts';
import type { Body, Design } from '../../../knit/garment/design.ts';
import { gaugeOfSwatch, ROWS_PER_RIDGE } from '../../../knit/garment/gauges.ts';
import { armholes } from '../../../knit/garment/kinds/armholes.ts';
import {
  type Choices,
  ruledDesign,
  seamedDesign,
  secondDesign,
  simpleDesign,
  startingDesign,
} from '../../../knit/garment/start.ts';
import type { Gauge } from '../../../knit/gauge.ts';
import type { Swatch } from '../../../knit/piece/garment.ts';
import { gaugeSpanMm } from '../../../words/measures.ts';
import { needleSizes } from '../../../words/needle-sizes.ts';

/** A figure as typed; null where the field is empty. Lengths in mm. */
export type Figure = number | null;

/** A swatch as she counted it, washed, and before washing where she did. */
export interface SwatchForm {
  readonly fabric: FabricName;
  readonly stitches: Figure;
  readonly widthMm: Figure;
  /** rows; of garter stitch she may count ridges, two rows each */
  readonly rows: Figure;
  readonly inRidges: boolean;
  readonly heightMm: Figure;
  readonly needle: Figure;
  readonly before?: { readonly stitches: Figure; readonly rows: Figure };
  /** g of the whole swatch, with the stitches and rows that it has in all */
  readonly weighed?: { readonly grams: Figure; readonly stitches: Figure; readonly rows: Figure };
}

/** What she has chosen and typed. The design follows from it; what she has not touched follows the body and the choices. */
export interface DesignForm {
  /** forms of version 1 begin with the choices that there were then: what a garment was designed from stays as it was */
  readonly version: 1 | 2 | 3 | 4 | 5 | 6 | 7;
  readonly name: string;
  readonly choices: Choices;
  /** whose measures: a saved person's name, or a table's size, until she types over them */
  readonly person: { readonly name?: string; readonly table?: BodyTable; readonly size?: string };
  readonly body: Body;
  readonly fabric: FabricName;
  /** the panels' own swatch first */
  readonly swatches: readonly SwatchForm[];
  /** figures and choices of the design that she has set herself, by their path: 'neck.widthMm' */
  readonly own: Readonly<Record<string, string | Figure>>;
  readonly overruled: readonly string[];
}

/** Someone whose measures are kept. */
export interface Person {
  readonly name: string;
  readonly body: Body;
}

const USUAL_BODY: Body = bodyOfSize('women', 'M') ?? ({} as Body);

/** A swatch over 10 cm, or over 4 inches where she measures in them, of an ordinary light yarn, to type over. */
export const usualSwatch = (fabric: FabricName): SwatchForm => ({
  fabric,
  ...(factsOf(fabric).ridges
    ? { stitches: 20, rows: 20, inRidges: true }
    : { stitches: 21, rows: 28, inRidges: false }),
  widthMm: gaugeSpanMm(),
  heightMm: gaugeSpanMm(),
  needle: 4,
});

/** Whether nothing in it is hers yet: what is drafted by it fits nobody's knitting. */
export function isUsualSwatch({
  fabric,
  stitches,
  rows,
  inRidges,
  needle,
  before,
  weighed,
}: SwatchForm): boolean {
  const usual = usualSwatch(fabric);
  const isOwn = before !== undefined || weighed !== undefined || inRidges !== usual.inRidges;
  return !isOwn && stitches === usual.stitches && rows === usual.rows && needle === usual.needle;
}

export const newForm = (): DesignForm => ({
  version: 7,
  name: '',
  choices: { kind: 'pullover', armhole: 'set-in', neck: 'round', fit: 'standard' },
  person: { table: 'women', size: 'M' },
  body: USUAL_BODY,
  fabric: 'stocking',
  swatches: [usualSwatch('stocking')],
  own: {},
  overruled: [],
});

/** A swatch that can be reckoned with; undefined while a figure is missing. */
export function readSwatch(form: SwatchForm): Swatch | undefined {
  const { fabric, stitches, widthMm, heightMm, needle } = form;
  const rows = rowsOf(form, form.rows);
  if (!stitches || !widthMm || !rows || !heightMm || !needle) return undefined;
  const before = form.before?.stitches && form.before.rows ? form.before : undefined;
  const beforeRows = before ? rowsOf(form, before.rows) : null;
  const {
    grams,
    stitches: inAll,
    rows: rowsInAll,
  } = form.weighed ?? { grams: null, stitches: null, rows: null };
  return {
    fabric,
    stitches,
    widthMm,
    rows,
    heightMm,
    needle,
    ...(before?.stitches && beforeRows
      ? { before: { stitches: before.stitches, widthMm, rows: beforeRows, heightMm } }
      : {}),
    ...(grams && inAll && rowsInAll ? { weighed: { grams, stitches: inAll, rows: rowsInAll } } : {}),
  };
}

const rowsOf = ({ inRidges }: SwatchForm, counted: Figure): Figure =>
  counted !== null && inRidges ? ROWS_PER_RIDGE * counted : counted;

/** What she had typed for another armhole did nothing to a set-in one before version 3. */
const isDeaf = ({ version, choices }: DesignForm, path: string): boolean =>
  version < 3 && armholes[choices.armhole].isCurved && path === 'underarmMm';

const NO_GAUGE: Gauge = { stitches: 0, rows: 0 };

/** The design that follows from the form. An empty figure becomes NaN, which the draft refuses at its field. */
export function designOf(form: DesignForm): Design {
  const read = form.swatches.flatMap((swatch) => readSwatch(swatch) ?? []);
  const main = read.find((swatch) => swatch.fabric === form.fabric);
  const begun = begunFrom(form, main ? gaugeOfSwatch(main) : NO_GAUGE);
  const gauges = Object.fromEntries(read.map((swatch) => [swatch.fabric, gaugeOfSwatch(swatch)]));
  const rib = read.find((swatch) => swatch.fabric === begun.hem.fabric);
  const panels = main?.needle ?? begun.needles.panels;
  const borders = form.version === 1 ? Math.max(2, panels - 0.5) : borderNeedle(panels);
  const needles = { panels, borders: rib?.needle ?? borders };
  const design: Design = { ...begun, gauges, needles, overruled: form.overruled };
  const own = Object.entries(form.own).filter(([path]) => !isDeaf(form, path));
  return own.reduce((made, [path, value]) => withFigure(made, path, taken(path, value)), design);
}

const begins = {
  1: simpleDesign,
  2: simpleDesign,
  3: ruledDesign,
  4: seamedDesign,
  5: seamedDesign,
  6: secondDesign,
  7: startingDesign,
} as const;

function begunFrom({ version, choices, body, fabric, person }: DesignForm, gauge: Gauge): Design {
  const made = begins[version](choices, body, fabric, gauge);
  if (version === 1) return asOfVersion1(made);
  const begun: Design = version < 5 ? made : { ...made, turns: 'wrapped' };
  // men's fronts close left over right (S. Pearl-McPhee, yarnharlot.ca, Feb. 2009; The Knitting Goddess, Oct. 2014)
  return person.table === 'men'
    ? { ...begun, frontBand: { ...begun.frontBand, holesIn: 'left front' } }
    : begun;
}

/** The choices with which a design began before there were others. */
function asOfVersion1(begun: Design): Design {
  const { buttonMm: _size, holesIn: _front, ...frontBand } = begun.frontBand;
  return { ...begun, frontBand, tapers: 'blended' };
}

/** The thickest needle sold that is at least half a millimetre thinner than the panels'; 2 mm where none is. */
const borderNeedle = (panels: number): number =>
  Math.max(2, ...needleSizes.filter((mm) => mm <= panels - 0.5));

const taken = (path: string, value: string | Figure): unknown =>
  path === 'seamStitch' ? value === 'seam stitch' : (value ?? Number.NaN);
