import type { Side } from '../../row/step.ts';
import type { PartRecipe, PartStart, Recipe, Section } from '../recipe.ts';
import { firstSides, sideOfRow } from '../sides.ts';
import type { PartForm, PieceForm, SectionForm, StartForm } from './form.ts';
import { writeGauge } from './gauge-form.ts';
import { writeShapings } from './write-shaping.ts';

/** The form that stands for a recipe; `formToRecipe` gives the same recipe back. */
export function recipeToForm(recipe: Recipe): PieceForm {
  const sides = firstSides(recipe.parts);
  const { name, mirrored, gauge, gauges } = recipe;
  return {
    name,
    makes: String(recipe.makes),
    ...(mirrored === undefined ? {} : { mirrored }),
    ...(gauge === undefined ? {} : { gauge: writeGauge(gauge) }),
    ...(gauges === undefined ? {} : { gauges }),
    parts: recipe.parts.map((part, i) => writePart(part, sides[i] ?? 'RS')),
  };
}

function writePart(part: PartRecipe, side: Side): PartForm {
  const { name, firstSide, selvedge, end } = part;
  let done = 0;
  const sections = part.sections.map((section) => {
    const form = writeSection(section, sideOfRow(done + 1, side));
    done += section.rows;
    return form;
  });
  return {
    name,
    start: writeStart(part.from),
    ...(firstSide === undefined ? {} : { firstSide }),
    ...(selvedge === undefined ? {} : { selvedge }),
    sections,
    end,
  };
}

function writeStart(from: PartStart): StartForm {
  if ('castOn' in from) return { kind: 'cast on', stitches: String(from.castOn) };
  if ('part' in from) {
    return { kind: 'split', part: from.part, stitches: String(from.stitches), edge: from.edge };
  }
  const edges = from.pickUp.map(({ along, stitches }) => ({ along, stitches: String(stitches) }));
  return { kind: 'pick up', edges };
}

const writeSection = (section: Section, row1: Side): SectionForm => ({
  name: section.name,
  rows: String(section.rows),
  fabric: section.fabric,
  needle: String(section.needle),
  shaping: writeShapings(section.shaping, row1),
  ...(section.words === undefined ? {} : { words: section.words }),
});
