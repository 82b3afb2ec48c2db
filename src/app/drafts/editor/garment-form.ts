import { type Fault, fault } from '../../../knit/fault.ts';
import type { Edit } from '../../../knit/making-up/edit.ts';
import type { MeasuredGauge } from '../../../knit/measured-gauge.ts';
import type { GaugeForm, PieceForm, Typed } from '../../../knit/piece/form/form.ts';
import type { MainFabric } from '../../../knit/piece/form/fresh.ts';
import { readGauge } from '../../../knit/piece/form/gauge-form.ts';
import { readDecimal, readWhole } from '../../../knit/piece/form/number.ts';
import type { StraightShape } from '../../../knit/piece/form/straight.ts';
import { recipeToForm } from '../../../knit/piece/form/write-piece.ts';
import type { Yarn } from '../../../knit/piece/garment.ts';
import type { PieceId } from '../../../progress/log.ts';
import type { GarmentRecord } from '../../../store/records.ts';
import type { Like } from './like.ts';

/** A garment as it is being typed; numbers are the text that stands in the fields. */
export interface GarmentForm {
  readonly name: Typed;
  readonly notes: Typed;
  readonly yarn: YarnForm;
  /** per 100 mm; blank where she has no swatch yet */
  readonly gauge: GaugeForm;
  /** mm; what new sections begin with */
  readonly needle: Typed;
  readonly pieces: readonly PieceEntry[];
  /** what is changed of pieces on the needles when it is saved, since it mends what was changed here; by their stored names */
  readonly mends?: readonly Edit[];
  /** the straight panels that pieces can be made of, as far as she said them */
  readonly shape?: StraightShape;
  /** the garment that this one was begun like, for another size */
  readonly like?: Like;
}

export interface PieceEntry {
  /** the piece's own id, so that its places stay with it whatever it is called and wherever it stands */
  readonly id: PieceId;
  readonly form: PieceForm;
}

export interface YarnForm {
  readonly name: Typed;
  readonly fibre: Typed;
  readonly colour: Typed;
  readonly dyeLot: Typed;
  readonly grams: Typed;
  readonly metres: Typed;
  readonly balls: Typed;
}

const blankYarn: YarnForm = { name: '', fibre: '', colour: '', dyeLot: '', grams: '', metres: '', balls: '' };
const blankGauge = (needle: Typed): GaugeForm => ({ stitches: '', rows: '', fabric: 'stocking', needle });
const USUAL_NEEDLE: Typed = '4';

/** What of a yarn no field shows: it stays with the yarn, and so does whatever a yarn may learn. */
export const besideForm = (yarn: Yarn): Partial<Omit<Yarn, keyof YarnForm>> =>
  Object.fromEntries(Object.entries(yarn).filter(([field]) => !Object.hasOwn(blankYarn, field)));

export const blankGarment: GarmentForm = {
  name: '',
  notes: '',
  yarn: blankYarn,
  gauge: blankGauge(USUAL_NEEDLE),
  needle: USUAL_NEEDLE,
  pieces: [],
};

export function garmentToForm(garment: GarmentRecord): GarmentForm {
  const pieces = garment.pieces.map(({ id, recipe }) => ({ id, form: recipeToForm(recipe) }));
  const gauge = pieces.find(({ form }) => form.gauge)?.form.gauge;
  const needle = gauge?.needle ?? commonNeedle(pieces) ?? USUAL_NEEDLE;
  return {
    name: garment.name,
    notes: garment.notes ?? '',
    yarn: yarnToForm(garment.yarns?.[0]),
    gauge: gauge ?? blankGauge(needle),
    needle,
    pieces,
  };
}

export function yarnToForm(yarn: Yarn | undefined): YarnForm {
  if (yarn === undefined) return blankYarn;
  const number = (value: number | undefined) => (value === undefined ? '' : String(value));
  return {
    name: yarn.name,
    fibre: yarn.fibre ?? '',
    colour: yarn.colour ?? '',
    dyeLot: yarn.dyeLot ?? '',
    grams: number(yarn.grams),
    metres: number(yarn.metres),
    balls: number(yarn.balls),
  };
}

/** The needle of most rows is that of the main fabric. */
function commonNeedle(pieces: readonly PieceEntry[]): string | undefined {
  const rows = new Map<string, number>();
  for (const section of pieces.flatMap(({ form }) => form.parts.flatMap((part) => part.sections))) {
    rows.set(section.needle, (rows.get(section.needle) ?? 0) + Number(section.rows));
  }
  return [...rows].sort((a, b) => b[1] - a[1])[0]?.[0];
}

/** Pieces that had the garment's gauge, or none of their own, go with it. */
export function withGauge(form: GarmentForm, gauge: GaugeForm): GarmentForm {
  const pieces = form.pieces.map((entry) => {
    const own = entry.form.gauge;
    const follows = own === undefined || sameGauge(own, form.gauge);
    return follows ? { ...entry, form: gaugedAs(entry.form, gauge) } : entry;
  });
  return { ...form, gauge, pieces };
}

/** The needle that the tension was measured with is the one that new sections begin with. */
export const withNeedle = (form: GarmentForm, needle: Typed): GarmentForm => ({
  ...withGauge(form, { ...form.gauge, needle }),
  needle,
});

/** What new pieces and sections begin in: the fabric and needle of the tension. */
export const mainOf = ({ gauge, needle }: Pick<GarmentForm, 'gauge' | 'needle'>): MainFabric => ({
  fabric: gauge.fabric ?? 'stocking',
  needle,
});

/** The piece with the gauge, or with none where the fields are blank. */
export function gaugedAs(piece: PieceForm, gauge: GaugeForm): PieceForm {
  const { gauge: _, ...rest } = piece;
  return isBlankGauge(gauge) ? rest : { ...rest, gauge };
}

export const sameGauge = (a: GaugeForm, b: GaugeForm): boolean =>
  a.stitches === b.stitches && a.rows === b.rows && a.fabric === b.fabric && a.needle === b.needle;
const isBlankGauge = (gauge: GaugeForm): boolean => gauge.stitches.trim() === '' && gauge.rows.trim() === '';

export interface GarmentRead {
  readonly name: string;
  readonly notes: string | undefined;
  readonly yarn: Yarn | undefined;
  readonly gauge: MeasuredGauge | undefined;
  /** with `at.field`: 'name', 'gauge rows', 'needle', 'yarn grams' ... */
  readonly faults: readonly Fault[];
}

/** Reads what is the garment's own; its pieces are read one by one. */
export function readGarment(form: GarmentForm): GarmentRead {
  const faults: Fault[] = [];
  const report = (found: Fault) => faults.push(found);
  const name = form.name.trim();
  if (name === '') report(fault('no name', {}, { field: 'name' }));
  readDecimal(form.needle, { field: 'needle' }, report);
  const gauge = isBlankGauge(form.gauge) ? undefined : readGauge(form.gauge, {}, report);
  return {
    name,
    notes: form.notes.trim() === '' ? undefined : form.notes,
    yarn: readYarn(form.yarn, report),
    gauge,
    faults,
  };
}

function readYarn(form: YarnForm, report: (found: Fault) => void): Yarn | undefined {
  if (Object.values(form).every((typed) => typed.trim() === '')) return undefined;
  const text = <K extends string>(key: K, typed: Typed) =>
    typed.trim() === '' ? {} : { [key]: typed.trim() };
  const number = (key: 'grams' | 'metres' | 'balls') => {
    if (form[key].trim() === '') return {};
    const at = { field: `yarn ${key}` };
    return { [key]: key === 'balls' ? readWhole(form[key], at, report) : readDecimal(form[key], at, report) };
  };
  return {
    name: form.name.trim(),
    ...text('fibre', form.fibre),
    ...text('colour', form.colour),
    ...text('dyeLot', form.dyeLot),
    ...number('grams'),
    ...number('metres'),
    ...number('balls'),
  };
}
