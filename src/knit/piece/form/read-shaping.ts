import type { Where } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Shaping } from '../recipe.ts';
import type { ShapingForm } from './form.ts';
import { readGroups } from './groups.ts';
import { type Report, readWhole } from './number.ts';
import { readRhythm } from './rhythm.ts';

/** One entry as typed → shaping of the recipe (two for groups at both edges). `at.field` names the entry. */
export function readShaping(form: ShapingForm, row1: Side, at: Where, report: Report): readonly Shaping[] {
  const number = (typed: string, name: string, least = 0) =>
    readWhole(typed, { ...at, field: `${at.field} ${name}` }, report, least);
  switch (form.kind) {
    case 'edge': {
      const { change, by, inset, first, rhythm, ...carried } = form;
      const each = signed(change, number(by, 'by', 1));
      const rows = readRhythm({ first, rhythm }, at, report);
      return [{ ...carried, by: each, rows, inset: number(inset, 'inset') }];
    }
    case 'across': {
      const { change, stitches, row, ...carried } = form;
      const by = signed(change, number(stitches, 'stitches', 1));
      return [{ ...carried, row: number(row, 'row', 1), by }];
    }
    case 'middle': {
      const { first, rhythm, from, ...carried } = form;
      const rows = readRhythm({ first, rhythm }, at, report);
      return [{ ...carried, rows, from: number(from, 'from') }];
    }
    case 'bind off':
    case 'cast on':
    case 'turn':
      return readGroups(form, row1, at, report);
  }
}

const signed = (change: 'decrease' | 'increase', count: number): number =>
  change === 'decrease' && count > 0 ? -count : count;
