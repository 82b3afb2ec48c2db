import type { Side } from '../../row/step.ts';
import type { Shaping } from '../recipe.ts';
import type { GroupShaping, ShapingForm } from './form.ts';
import { writeGroups, writePair } from './groups.ts';
import { writeRhythm } from './rhythm.ts';

/** The shaping of a section as a knitter says it; groups that mirror each other become one entry for both edges. */
export function writeShapings(list: readonly Shaping[], row1: Side): readonly ShapingForm[] {
  const forms: ShapingForm[] = [];
  for (let i = 0; i < list.length; i += 1) {
    const shaping = list[i] as Shaping;
    const next = list[i + 1];
    const pair = isGroups(shaping) && next !== undefined && isGroups(next) && writePair(shaping, next, row1);
    forms.push(pair || writeShaping(shaping));
    if (pair) i += 1;
  }
  return forms;
}

function writeShaping(shaping: Shaping): ShapingForm {
  switch (shaping.kind) {
    case 'edge': {
      const { by, rows, inset, ...carried } = shaping;
      return { ...carried, ...unsigned(by), inset: String(inset), ...writeRhythm(rows) };
    }
    case 'across': {
      const { by, row, ...carried } = shaping;
      const { change, by: stitches } = unsigned(by);
      return { ...carried, change, stitches, row: String(row) };
    }
    case 'middle': {
      const { rows, from, ...carried } = shaping;
      return { ...carried, from: String(from), ...writeRhythm(rows) };
    }
    case 'bind off':
    case 'cast on':
    case 'turn':
      return writeGroups(shaping);
  }
}

const isGroups = (shaping: Shaping): shaping is GroupShaping =>
  shaping.kind === 'bind off' || shaping.kind === 'cast on' || shaping.kind === 'turn';

const unsigned = (by: number): { change: 'decrease' | 'increase'; by: string } => ({
  change: by < 0 ? 'decrease' : 'increase',
  by: String(Math.abs(by)),
});
