import type { Line, Stretch } from '../../../src/knit/making-up/joint.ts';
import type { MakingUpStep } from '../../../src/knit/making-up/step.ts';
import type { Trouble, WorkedJoint } from '../../../src/knit/making-up/work-making-up.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { PartRecipe, PieceRole, Recipe, Section, Shaping } from '../../../src/knit/piece/recipe.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { told } from '../../told.ts';

/** Pieces that can be reckoned in the head: a stitch is 4 mm wide and a row 3 mm high; in rib it is 2 mm by 5 mm. */
export const gauge = { stitches: 25, rows: 100 / 3 };
const gauges = { 'rib 2x2': { stitches: 50, rows: 20 } };

export const section = (name: string, rows: number, ...shaping: readonly Shaping[]): Section => ({
  name,
  rows,
  fabric: name === 'rib' ? 'rib 2x2' : 'stocking',
  needle: 4,
  shaping,
});

/** Bound off at both edges, the right ones from `row` on, the left ones a row later; in every second row. */
export const groups = (row: number, ...stitches: readonly number[]): Shaping[] => [
  off('right', row, ...stitches),
  off('left', row + 1, ...stitches),
];

export const off = (edge: 'right' | 'left', row: number, ...stitches: readonly number[]): Shaping => ({
  kind: 'bind off',
  edge,
  groups: stitches.map((count, i) => ({ row: row + 2 * i, stitches: count })),
});

/** One stitch less (or more) on each of the rows. */
export const slant = (edge: 'right' | 'left' | 'both', by: -1 | 1, ...rows: readonly number[]): Shaping => ({
  kind: 'edge',
  edge,
  by,
  rows,
  inset: 1,
  lean: 'mirrored',
});

export const part = (
  name: string,
  from: PartRecipe['from'] | number,
  sections: readonly Section[],
  end: PartRecipe['end'] = 'bind off',
): PartRecipe => ({ name, from: typeof from === 'number' ? { castOn: from } : from, sections, end });

export const piece = (
  name: string,
  role: PieceRole,
  parts: readonly PartRecipe[],
  more: Partial<Recipe> = {},
): Recipe => ({ name, role, makes: 1, gauge, gauges, parts, ...more });

export function standing(...pieces: readonly Recipe[]): StandingGarment {
  const made = asPlanned({ name: 'by hand', pieces });
  if (!made.ok) throw new Error(told(made.faults));
  return made.value;
}

/** A stretch in few words: part, make, edge, and what of it. */
function stretchSaid({
  part: name,
  make,
  edge,
  sections,
  rows,
  level,
  shaped,
  stitches,
  reversed,
}: Stretch): string {
  return [
    make === 1 ? name : `${name} ${make}`,
    edge,
    sections?.join('+'),
    rows && `rows ${rows.first}-${rows.last}`,
    stitches && `stitches ${stitches.from}-${stitches.to}`,
    level,
    shaped && `${shaped} shaping`,
    reversed && 'turned',
  ]
    .filter(Boolean)
    .join(' ');
}

export const lineSaid = (line: Line): string => line.map(stretchSaid).join(', ');

/** A joint as it was worked: rows, stitches and mm behind each line. */
export function workedSaid({ joint, lines }: WorkedJoint): string {
  const measured = (i: number, line: Line): string => {
    const one = lines[i];
    const counts = [
      one?.rows && `${one.rows}r`,
      one?.stitches && `${one.stitches}s`,
      `${one?.mm.toFixed(1)}mm`,
    ];
    return `${lineSaid(line)} (${counts.filter(Boolean).join(' ')})`;
  };
  switch (joint.kind) {
    case 'seam':
      return `${joint.of}: ${measured(0, joint.a)} = ${measured(1, joint.b)}`;
    case 'pick up': {
      const along = joint.along.map(({ line, stitches }, i) => `${stitches} of ${measured(i, line)}`);
      return `${joint.piece} ${joint.make}: ${along.join('; ')}`;
    }
    case 'left free':
      return `${joint.as}: ${measured(0, joint.line)}`;
  }
}

export function troubleSaid(trouble: Trouble): string {
  switch (trouble.kind) {
    case 'forgotten': {
      const { part: name, make, edge, rows, stitches, mm } = trouble.rest;
      return `forgotten: ${name} ${make} ${edge} ${rows}r ${stitches}s ${mm.toFixed(1)}mm`;
    }
    case 'do not meet':
      return `${trouble.joint} do not meet: ${trouble.first.toFixed(1)} and ${trouble.second.toFixed(1)} ${trouble.unit}`;
    case 'pick up':
      return `${trouble.joint} pick up ${trouble.along}: ${trouble.stitches} for ${trouble.fit}`;
    case 'not there yet':
      return `${trouble.joint} not there yet: ${stretchSaid(trouble.at)} after ${stretchSaid(trouble.after)}`;
    default:
      return `${trouble.joint} ${trouble.kind}: ${stretchSaid(trouble.at)}`;
  }
}

/** Plain data in few words: what it holds, mm to a tenth. */
export function dataSaid(data: unknown): string {
  if (typeof data === 'number') return String(Math.round(data * 10) / 10);
  if (Array.isArray(data)) return `[${data.map(dataSaid).join(' ')}]`;
  if (typeof data !== 'object' || data === null) return String(data);
  const told = Object.entries(data).filter(([, value]) => value !== undefined);
  const said = told.map(([name, value]) => {
    const isData = typeof value === 'object' && value !== null && !Array.isArray(value);
    return isData ? `${name} {${dataSaid(value)}}` : `${name} ${dataSaid(value)}`;
  });
  return said.join(' ');
}

/** A step by its id, and all that it tells. */
export const stepSaid = ({ id, ...rest }: MakingUpStep): string => `${id}: ${dataSaid(rest)}`;
