import { fromLeft } from './from-left.ts';
import { inUnit } from './in-unit.ts';
import { saysNumber } from './numbers.ts';
import { languageNow, speech } from './settings.ts';

/** One inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
const MM_PER_INCH = 25.4;

/** Digits of a length in a field: a sixteenth of an inch has four. */
const LENGTH_DIGITS = 4;

const mmPerUnit = (): number => (speech.value.units === 'in' ? MM_PER_INCH : 10);

/** 'cm' or 'in', as the language has it. */
export const lengthUnit = (): string => (speech.value.units === 'cm' ? 'cm' : languageNow().inch);

/** Over what a gauge is given, mm: leaflets have 10 cm, or 4 inches. */
export const gaugeSpanMm = (): number => (speech.value.units === 'in' ? 4 * MM_PER_INCH : 100);

/**
 * For a field: millimetres as the number she types, in her unit. What was typed in that unit comes back as it was
 * typed, since it is a short number there; any other length to a tenth (cm) or, as on a tape, an eighth (in).
 * @param isWorkedOut by the app: it stands in eighths even where it is a short number by chance
 */
export const lengthToType = (mm: number, isWorkedOut = false): number => {
  const [shortest, grain] = speech.value.units === 'in' ? [10_000, EIGHTHS] : [100, 10];
  const unit = mmPerUnit();
  const typed = Math.round((mm / unit) * shortest) / shortest;
  return !isWorkedOut && Math.abs(typed * unit - mm) < DUST_MM
    ? typed
    : Math.round((mm / unit) * grain) / grain;
};

/** What binary fractions leave over, mm. */
const DUST_MM = 1e-6;

/** What stands in a field: '4¼' where it is an eighth of an inch, as she typed it otherwise: '4.3', '42.5'. */
export const saysTyped = (value: number): string =>
  speech.value.units === 'in' && Number.isInteger(value * EIGHTHS)
    ? inEighths(value)
    : saysNumber(value, { plain: true, digits: LENGTH_DIGITS });

/** For a field: the number she typed, in millimetres. */
export const lengthTyped = (value: number): number => value * mmPerUnit();

/**
 * '42.5 cm', or to the quarter inch '16¾ in', as tape measures and patterns have it; an eighth that she typed herself is
 * said as it is.
 */
export function saysLength(mm: number): string {
  if (speech.value.units === 'cm') return inUnit(saysNumber(mm / 10, { digits: 1 }), 'cm');
  const inches = mm / MM_PER_INCH;
  const typed = Math.round(inches * 8) / 8;
  const isTyped = Math.abs(typed - inches) * MM_PER_INCH < DUST_MM;
  return inUnit(fromLeft(inEighths(isTyped ? typed : Math.round(inches * 4) / 4)), lengthUnit());
}

/** What she asked for, as it stands in its field: in eighths where the app worked it out, else as she typed it. */
export const saysAsked = (mm: number): string => inUnit(fromLeft(saysTyped(lengthToType(mm))), lengthUnit());

const EIGHTHS = 8;

/** '−16¾' of a number of inches that is one of eighths; the app's own typeface has no sign for an odd one: '4 3⁄8'. */
function inEighths(inches: number): string {
  const count = Math.round(Math.abs(inches) * EIGHTHS);
  const over = count % EIGHTHS;
  const part = over % 2 ? `\u00a0${over}⁄8` : ['', '¼', '½', '¾'][over / 2];
  const digits = count < EIGHTHS && over ? `${part}`.trim() : saysNumber(Math.floor(count / EIGHTHS)) + part;
  return inches < 0 && count > 0 ? `−${digits}` : digits;
}

/** '50 g' or '1.76 oz' stay with the ball band: yarn is weighed in grams everywhere, lengths follow her unit. */
export const saysGrams = (grams: number): string =>
  inUnit(saysNumber(grams, { digits: grams < 20 ? 1 : 0 }), 'g');

/** One yard is 0.9144 m exactly (the same agreement). */
const METRES_PER_YARD = 0.9144;

const metresPerUnit = (): number => (speech.value.units === 'in' ? METRES_PER_YARD : 1);

/** 'm' or 'yd', as the language has it: of yarn. */
export const yarnUnit = (): string => (speech.value.units === 'cm' ? 'm' : languageNow().yard);

/** For a field: metres of yarn as the number she types, in her unit, to a tenth. */
export const yarnToType = (metres: number): number => Math.round((metres / metresPerUnit()) * 10) / 10;

/** For a field: the number she typed, in metres of yarn. */
export const yarnTyped = (value: number): number => value * metresPerUnit();

export const saysYarnLength = (metres: number): string =>
  inUnit(saysNumber(metres / metresPerUnit(), { digits: 0 }), yarnUnit());
