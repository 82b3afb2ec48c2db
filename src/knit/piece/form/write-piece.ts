import type { Side } from '../../row/step.ts';
import type { PartRecipe, PartStart, Recipe, Section } from '../recipe.ts';
import { firstSides, sideOfRow } from '../sides.ts';
import type { PartForm, PieceForm, SectionForm, StartForm } from './form.ts';
import { writeGauge } from './gauge-form.ts';
import { writeShapings } from './write-shaping.ts';

/** The form that stands for a recipe; `formToRecipe` gives the same recipe back. */
export function recipeToForm(recipe: Recipe): PieceForm {
  const sides = firstSides(recipe.parts);
  const { makes, gauge, parts, ...carried } = recipe;
  return {
    ...carried,
    makes: String(makes),
    ...(gauge === undefined ? {} : { gauge: writeGauge(gauge) }),
    parts: parts.map((part, i) => writePart(part, sides[i] ?? 'RS')),
  };
}

function writePart(part: PartRecipe, side: Side): PartForm {
  const { from, sections, ...carried } = part;
  let done = 0;
  const forms = sections.map((section) => {
    const form = writeSection(section, sideOfRow(done + 1, side));
    done += section.rows;
    return form;
  });
  return { ...carried, start: writeStart(from), sections: forms };
}

function writeStart(from: PartStart): StartForm {
  if ('castOn' in from) {
    const { castOn, ...carried } = from;
    return { ...carried, kind: 'cast on', stitches: String(castOn) };
  }
  if ('part' in from) return { ...from, kind: 'split', stitches: String(from.stitches) };
  const { pickUp, ...carried } = from;
  const edges = pickUp.map((edge) => ({ ...edge, stitches: String(edge.stitches) }));
  return { ...carried, kind: 'pick up', edges };
}

const writeSection = (section: Section, row1: Side): SectionForm => ({
  ...section,
  rows: String(section.rows),
  needle: String(section.needle),
  shaping: writeShapings(section.shaping, row1),
});
