import { proposedRole } from '../../../making-up/role.ts';
import type { PartRecipe, Recipe, Section } from '../../../piece/recipe.ts';
import type { Build, MadeRow, PartBuild, PieceBuild } from './build.ts';
import { cutByFabric, type OfOneFabric } from './cut-by-fabric.ts';
import type { SectionBuild } from './section.ts';
import { fabricsSeen } from './seen-fabric.ts';

/** A read piece as a recipe whose rows are spelled out. */
export function recipeOf(build: Build, piece: PieceBuild): Recipe | undefined {
  const parts = piece.parts.filter(
    (part) => part.rows.length > 0 || part.end !== undefined || part.parent !== undefined,
  );
  if (parts.length === 0 || parts[0]?.start === 0) return undefined;
  return {
    name: titled(piece.name),
    role: proposedRole(piece.name),
    makes: piece.makes,
    ...(piece.mirrored && piece.makes > 1 ? { mirrored: true } : {}),
    ...(build.gauge === undefined ? {} : { gauge: build.gauge }),
    ...(build.gauges && { gauges: build.gauges }),
    parts: [...parts.map((part) => partRecipe(build, piece, part)), ...stillResting(piece)],
  };
}

/** Headings are read in small letters; a piece is called 'Left front'. */
export const titled = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

function partRecipe(build: Build, piece: PieceBuild, part: PartBuild): PartRecipe {
  const last = part.rows.at(-1);
  // the row in which all stitches are bound off is the part's end, not a row of a section
  const rows = part.live === 0 && last && isBindOff(last) ? part.rows.slice(0, -1) : part.rows;
  const splits =
    piece.parts.some((one) => one.parent === part) || piece.resting.some((one) => one.parent === part);
  return {
    name: part.name,
    from: part.from,
    firstSide: part.firstSide,
    sections: sectionsOf(build, part, rows),
    end: splits ? 'split' : part.live === 0 ? 'bind off' : 'hold',
  };
}

/** 'Bind off all sts', as a row with a number as well. */
const isBindOff = ({ kind, steps, own, after }: MadeRow): boolean =>
  kind === 'bind off' ||
  (own === undefined && after === 0 && steps.every((step) => 'work' in step && step.work === 'bo'));

function sectionsOf({ gaugeInPattern }: Build, part: PartBuild, rows: readonly MadeRow[]): Section[] {
  const out: Section[] = [];
  const seen = gaugeInPattern ? [] : fabricsSeen(rows);
  part.sections.forEach((section, i) => {
    const to = Math.min(part.sections[i + 1]?.first ?? rows.length, rows.length);
    const own = rows.slice(section.first, to);
    if (own.length === 0) return;
    // a gauge counted in the pattern itself holds for whatever is worked
    const cut = gaugeInPattern
      ? [{ ...section, rows: own }]
      : cutByFabric(section, own, seen.slice(section.first, to));
    out.push(...cut.map((one) => sectionOf(section, one)));
  });
  return out;
}

function sectionOf({ needle, stretch }: SectionBuild, { name, fabric, rows }: OfOneFabric): Section {
  const own = Object.fromEntries(rows.flatMap((row, i) => (row.own === undefined ? [] : [[i + 1, row.own]])));
  return {
    name,
    rows: rows.length,
    fabric,
    needle,
    shaping: [],
    words: rows.map((row) => row.steps),
    ...(Object.keys(own).length === 0 ? {} : { own }),
    ...(stretch === undefined
      ? {}
      : {
          length: {
            id: stretch.id,
            open: stretch.open,
            ...(stretch.mm === undefined ? {} : { mm: stretch.mm }),
            ...(stretch.endSide === undefined ? {} : { endSide: stretch.endSide }),
            from: stretch.from,
          },
        }),
  };
}

/** Stitches that the text never takes up again rest on their holder. */
function stillResting(piece: PieceBuild): PartRecipe[] {
  return piece.resting.map((one, i) => ({
    name: `resting ${i + 1}`,
    from: { part: one.parent.name, stitches: one.stitches, edge: one.edge },
    firstSide: one.firstSide,
    sections: [],
    end: 'hold',
  }));
}
