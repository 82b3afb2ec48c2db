import { type Fault, fault, placed } from '../fault.ts';
import type { PartRecipe, Recipe, Section } from './recipe.ts';

/** Beyond these a figure is a slip of the finger, not a garment. */
export const MOST_STITCHES = 2000;
export const MOST_ROWS = 5000;
export const MOST_PIECES = 40;
export const MOST_PARTS = 40;
export const MOST_SECTIONS = 200;

/** Everything that can be said of a recipe without knitting it: figures out of range, parts that do not join. */
export function checkRecipe(recipe: Recipe): Fault[] {
  const faults: Fault[] = [];
  if (!isWhole(recipe.makes, 1, 20)) {
    faults.push(fault('bad makes', { makes: recipe.makes }, { field: 'makes' }));
  }
  if (recipe.parts.length === 0) {
    faults.push(fault('no parts', {}, { field: 'parts' }));
  }
  if (recipe.parts.length > MOST_PARTS) {
    const figures = { parts: recipe.parts.length, mostParts: MOST_PARTS };
    return [
      placed(fault('too many parts', figures), {
        piece: recipe.name,
        field: 'parts',
      }),
    ];
  }
  const known = new Map<string, PartRecipe>();
  for (const part of recipe.parts) {
    const here = [...checkStart(part, known), ...checkSections(part.sections), ...checkLength(part)];
    if (known.has(part.name)) {
      here.push(fault('part name twice', { name: part.name }, { field: 'name' }));
    }
    faults.push(...here.map((f) => placed(f, { part: part.name })));
    known.set(part.name, part);
  }
  return faults.map((f) => placed(f, { piece: recipe.name }));
}

function checkStart({ from }: PartRecipe, known: ReadonlyMap<string, PartRecipe>): Fault[] {
  if ('castOn' in from) return checkStitches(from.castOn, 'cast on');
  if ('pickUp' in from) {
    if (from.pickUp.length === 0) {
      return [fault('nothing picked up', {}, { field: 'pick up' })];
    }
    return from.pickUp.flatMap((p) => checkStitches(p.stitches, 'pick up'));
  }
  const parent = known.get(from.part);
  if (!parent) {
    return [fault('no such part', {}, { field: 'from' })];
  }
  if (parent.end === 'bind off') {
    return [fault('bound off', { name: from.part }, { field: 'from' })];
  }
  return checkStitches(from.stitches, 'stitches');
}

const checkStitches = (stitches: number, field: string): Fault[] =>
  isWhole(stitches, 1, MOST_STITCHES)
    ? []
    : [fault('bad stitches', { stitches, mostStitches: MOST_STITCHES }, { field })];

function checkSections(sections: readonly Section[]): Fault[] {
  return sections.flatMap((section, sectionIndex) => {
    const faults: Fault[] = [];
    if (section.onNeedle !== undefined) faults.push(...checkStitches(section.onNeedle, 'on the needle'));
    if (!isWhole(section.rows, 0, MOST_ROWS)) {
      faults.push(fault('bad rows', { rows: section.rows, mostRows: MOST_ROWS }, { field: 'rows' }));
    }
    if (!(section.needle > 0 && section.needle <= 50)) {
      faults.push(fault('bad needle', {}, { field: 'needle' }));
    }
    return faults.map((f) => placed(f, { sectionIndex }));
  });
}

/** A part is kept as one list of rows, its bound-off row among them. */
function checkLength({ sections, end }: PartRecipe): Fault[] {
  if (sections.length > MOST_SECTIONS) {
    const figures = { sections: sections.length, mostSections: MOST_SECTIONS };
    return [fault('too many sections', figures)];
  }
  const rows = sections.reduce((sum, section) => sum + section.rows, end === 'bind off' ? 1 : 0);
  return rows > MOST_ROWS ? [fault('part too long', { rows, mostRows: MOST_ROWS })] : [];
}

const isWhole = (n: number, least: number, most: number): boolean =>
  Number.isSafeInteger(n) && n >= least && n <= most;
