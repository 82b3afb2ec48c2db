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
  const { makes, gauge, parts, ...carried } = form;
  const recipe: Recipe = {
    ...carried,
    makes: readWhole(makes, { ...piece, field: 'makes' }, report, 1),
    ...(gauge === undefined ? {} : { gauge: readGauge(gauge, piece, report) }),
    parts: readParts(parts, piece, report),
  };
  return { recipe, faults };
}

/** The recipe that a form stands for, or every field that cannot be read. */
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
  const { start, sections, ...carried } = form;
  return {
    ...carried,
    from: readStart(start, at, report, earlier),
    sections: sections.map((section, sectionIndex) =>
      readBareSection(section, { ...at, sectionIndex }, report),
    ),
  };
}

function readStart(form: StartForm, at: Where, report: Report, earlier: readonly PartForm[]): PartStart {
  const count = (typed: string, field: string) => readWhole(typed, { ...at, field }, report, 1);
  switch (form.kind) {
    case 'cast on': {
      const { kind: _, stitches, ...carried } = form;
      return { ...carried, castOn: count(stitches, 'cast on') };
    }
    case 'split': {
      if (!earlier.some((other) => other.name === form.part)) {
        const field = { ...at, field: 'from' };
        report(fault('no such part', {}, field));
      }
      const { kind: _, ...carried } = form;
      return { ...carried, stitches: count(form.stitches, 'stitches') };
    }
    case 'pick up': {
      const { kind: _, edges, ...carried } = form;
      const pickUp = edges.map((edge, i) => ({
        ...edge,
        stitches: count(edge.stitches, `pick up ${i + 1}`),
      }));
      return { ...carried, pickUp };
    }
  }
}

function readBareSection(form: SectionForm, at: Where, report: Report): Section {
  const { own, ...carried } = form;
  const rows = readWhole(form.rows, { ...at, field: 'rows' }, report);
  const kept = own && ownWithin(own, rows);
  return {
    ...carried,
    rows,
    needle: readDecimal(form.needle, { ...at, field: 'needle' }, report),
    shaping: [],
    ...(kept === undefined ? {} : { own: kept }),
  };
}

/**
 * The pattern's own words stay with their rows. Where she makes the section shorter, the words of rows that are no
 * more say nothing; the form keeps them, so that they are there again when she takes the rows back.
 */
function ownWithin(own: NonNullable<Section['own']>, rows: number): Section['own'] {
  const said = Object.entries(own).filter(([row]) => Number(row) <= rows);
  return said.length === 0 ? undefined : Object.fromEntries(said);
}

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
