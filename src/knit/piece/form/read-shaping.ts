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
      const { kind, edge, lean } = form;
      const by = signed(form.change, number(form.by, 'by', 1));
      return [
        { kind, edge, by, rows: readRhythm(form, at, report), inset: number(form.inset, 'inset'), lean },
      ];
    }
    case 'across': {
      const by = signed(form.change, number(form.stitches, 'stitches', 1));
      return [{ kind: form.kind, row: number(form.row, 'row', 1), by }];
    }
    case 'middle':
      return [{ kind: form.kind, rows: readRhythm(form, at, report), from: number(form.from, 'from') }];
    case 'bind off':
    case 'cast on':
    case 'turn':
      return readGroups(form, row1, at, report);
  }
}

const signed = (change: 'decrease' | 'increase', count: number): number =>
  change === 'decrease' && count > 0 ? -count : count;
