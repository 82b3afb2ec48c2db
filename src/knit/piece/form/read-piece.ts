import { type Fault, fault, ok, type Result, refuse, type Where } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { PartRecipe, PartStart, Recipe, Section } from '../recipe.ts';
import { firstSides, sideOfRow } from '../sides.ts';
import type { PartForm, PieceForm, SectionForm, StartForm } from './form.ts';
import { readGauge } from './gauge-form.ts';
import { type Report, readDecimal, readWhole } from './number.ts';
import { readShaping } from './read-shaping.ts';

export interface ReadPiece {
  /** what could be read; a field that could not counts as 0 */
  readonly recipe: Recipe;
  /** the fields that could not be read, each with its part, section and field */
  readonly faults: readonly Fault[];
}

/** Reads a form as far as it goes. Whether the recipe can be knitted is for `plan` to say. */
export function readPiece(form: PieceForm): ReadPiece {
  const faults: Fault[] = [];
  const report: Report = (found) => faults.push(found);
  const piece: Where = { piece: form.name };
  named(form.name, { ...piece, field: 'name' }, report);
  const makes = readWhole(form.makes, { ...piece, field: 'makes' }, report, 1);
  const gauge = form.gauge && readGauge(form.gauge, piece, report);
  const recipe: Recipe = {
    name: form.name,
    makes,
    ...(form.mirrored === undefined ? {} : { mirrored: form.mirrored }),
    ...(gauge === undefined ? {} : { gauge }),
    ...(form.gauges === undefined ? {} : { gauges: form.gauges }),
    parts: readParts(form.parts, piece, report),
  };
  return { recipe, faults };
}

/** The recipe that a form stands for, or every field that cannot be read. @instrument of the round trip's law */
export function formToRecipe(form: PieceForm): Result<Recipe> {
  const { recipe, faults } = readPiece(form);
  return faults.length > 0 ? refuse(...faults) : ok(recipe);
}

function readParts(forms: readonly PartForm[], piece: Where, report: Report): readonly PartRecipe[] {
  // rows and starts first: they settle on which side each section begins, which the shaping needs
  const bare = forms.map((form, i) =>
    readBarePart(form, { ...piece, part: form.name }, report, forms.slice(0, i)),
  );
  const sides = firstSides(bare);
  return bare.map((part, i) => shapePart(part, forms[i] as PartForm, sides[i] ?? 'RS', piece, report));
}

function readBarePart(form: PartForm, at: Where, report: Report, earlier: readonly PartForm[]): PartRecipe {
  named(form.name, { ...at, field: 'name' }, report);
  if (form.name.trim() !== '' && earlier.some((other) => other.name === form.name)) {
    report(fault('part name twice', { name: form.name }, { ...at, field: 'name' }));
  }
  return {
    name: form.name,
    from: readStart(form.start, at, report, earlier),
    ...(form.firstSide === undefined ? {} : { firstSide: form.firstSide }),
    ...(form.selvedge === undefined ? {} : { selvedge: form.selvedge }),
    sections: form.sections.map((section, sectionIndex) =>
      readBareSection(section, { ...at, sectionIndex }, report),
    ),
    end: form.end,
  };
}

function readStart(form: StartForm, at: Where, report: Report, earlier: readonly PartForm[]): PartStart {
  const stitches = (typed: string, field: string) => readWhole(typed, { ...at, field }, report, 1);
  switch (form.kind) {
    case 'cast on':
      return { castOn: stitches(form.stitches, 'cast on') };
    case 'split':
      if (!earlier.some((other) => other.name === form.part)) {
        const field = { ...at, field: 'from' };
        report(fault('no such part', {}, field));
      }
      return { part: form.part, stitches: stitches(form.stitches, 'stitches'), edge: form.edge };
    case 'pick up':
      return {
        pickUp: form.edges.map((edge, i) => ({
          along: edge.along,
          stitches: stitches(edge.stitches, `pick up ${i + 1}`),
        })),
      };
  }
}

const readBareSection = (form: SectionForm, at: Where, report: Report): Section => ({
  name: form.name,
  rows: readWhole(form.rows, { ...at, field: 'rows' }, report),
  fabric: form.fabric,
  needle: readDecimal(form.needle, { ...at, field: 'needle' }, report),
  shaping: [],
  ...(form.words === undefined ? {} : { words: form.words }),
});

function shapePart(part: PartRecipe, form: PartForm, side: Side, piece: Where, report: Report): PartRecipe {
  let done = 0;
  const sections = part.sections.map((section, sectionIndex) => {
    const row1 = sideOfRow(done + 1, side);
    done += section.rows;
    const shaping = (form.sections[sectionIndex]?.shaping ?? []).flatMap((entry, i) =>
      readShaping(
        entry,
        row1,
        { ...piece, part: part.name, sectionIndex, field: `shaping ${i + 1}` },
        report,
      ),
    );
    return { ...section, shaping };
  });
  return { ...part, sections };
}

function named(name: string, at: Where, report: Report): void {
  if (name.trim() === '') report(fault('no name', {}, at));
}
