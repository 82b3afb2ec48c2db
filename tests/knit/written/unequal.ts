import { isDeepStrictEqual } from 'node:util';
import { type Finished, finished } from '../../../src/knit/making-up/finished.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import { workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import type { ReadPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import type { PlannedPart } from '../../../src/knit/piece/planned.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { readMakingUp } from '../../../src/knit/written/read-making-up.ts';
import { stripesTold } from '../../../src/knit/written/read-stripes.ts';
import type { WorkedSize } from '../../../src/knit/written/work-size.ts';
import { coloursOf } from '../../../src/knit/yarn/stripes.ts';
import { told } from '../../told.ts';
import { saysJoints, saysTroubles } from './says-joints.ts';

/** What differs between a garment and what was read of the pattern that was written of it. */
export interface Unequal {
  /** what of it: the judge counts by it */
  readonly kind: string;
  readonly where: string;
}

/** All that a pattern tells of a garment in one size, compared with what was read: piece by piece, row by row, joint by joint. */
export function unequal(read: ReadPattern, size: WorkedSize): readonly Unequal[] {
  const out: Unequal[] = [];
  const differs = (kind: string, where: string, was: unknown, is: unknown) => {
    if (!isDeepStrictEqual(was, is))
      out.push({ kind, where: `${where}: ${JSON.stringify(was)} → ${JSON.stringify(is)}` });
  };
  for (const line of read.lines)
    if (line.faults.length > 0) differs('complaints', line.text, '', told(line.faults));
  differs('pieces', '', size.garment.pieces.length, read.pieces.length);
  size.garment.pieces.forEach(({ recipe, makes }, i) => {
    const found = read.pieces[i];
    if (!found) return;
    for (const [kind, was, is] of piecesOf(recipe, found.recipe)) differs(kind, recipe.name, was, is);
    if (!found.plan.ok) {
      differs('no plan', recipe.name, '', told(found.plan.faults));
      return;
    }
    const [own, after] = [makes[0]?.parts ?? [], found.plan.value.parts];
    differs('parts', recipe.name, own.length, after.length);
    own.forEach((part, p) => {
      const other = after[p];
      if (!other) return;
      const where = `${recipe.name}, ${part.name}`;
      for (const [kind, was, is] of partsOf(part, other)) differs(kind, where, was, is);
      compareRows(part, other, where, differs);
    });
  });
  compareMakingUp(read, size, differs);
  compareColours(read, size, differs);
  return out;
}

type Compared = readonly (readonly [kind: string, was: unknown, is: unknown])[];

const nameOf = (name: string) => name.toLowerCase();

const piecesOf = (own: Recipe, other: Recipe): Compared => [
  ['piece name', nameOf(own.name), nameOf(other.name)],
  ['makes', [own.makes, own.mirrored ?? false], [other.makes, other.mirrored ?? false]],
  ['role', own.role, other.role],
];

/** A part is called as the reader calls it; what it is taken from is told by where that lies. */
const partsOf = (own: PlannedPart, other: PlannedPart): Compared => [
  ['from', fromOf(own), fromOf(other)],
  ['end', own.end, other.end],
  ['left', own.left, other.left],
];

const fromOf = ({ from, start }: PlannedPart) =>
  'castOn' in from
    ? ['cast on', from.castOn]
    : 'pickUp' in from
      ? from.pickUp.map(({ along, stitches, held }) => [nameOf(along), stitches, held === true])
      : ['takes', from.edge, start];

type Differs = (kind: string, where: string, was: unknown, is: unknown) => void;

/** Each kind of difference is told once of a part: the first row of it. */
function compareRows(own: PlannedPart, other: PlannedPart, where: string, differs: Differs): void {
  differs('rows', where, own.rows.length, other.rows.length);
  if (own.rows.length !== other.rows.length) return;
  const looks: readonly (readonly [string, (part: PlannedPart, i: number) => unknown])[] = [
    ['numbers', ({ rows }, i) => [rows[i]?.n, rows[i]?.side]],
    ['counts', ({ rows }, i) => [rows[i]?.before, rows[i]?.after]],
    ['steps', ({ rows }, i) => rows[i]?.steps],
    ['needle', ({ rows }, i) => rows[i]?.needle],
    ['shaping', ({ rows }, i) => rows[i]?.shaping],
    ['fabric', ({ rows, sections }, i) => sections[rows[i]?.section ?? 0]?.fabric],
    ['section', ({ rows, sections }, i) => nameOf(sections[rows[i]?.section ?? 0]?.name ?? '')],
  ];
  for (const [kind, look] of looks) {
    const at = own.rows.findIndex((_, i) => !isDeepStrictEqual(look(own, i), look(other, i)));
    if (at >= 0) differs(kind, `${where}, row ${at + 1}`, look(own, at), look(other, at));
  }
}

/** Every row of every copy in the colour that it has in this size. */
function compareColours(read: ReadPattern, { coloured = [] }: WorkedSize, differs: Differs): void {
  const restriped = stripesTold(read).map((one) => ({ ...one, piece: String(one.piece) }));
  for (const [i, { recipe, plan }] of read.pieces.entries()) {
    const own = plan.ok ? plan.value.parts : [];
    for (let make = 1; make <= recipe.makes; make += 1) {
      const was = coloured.find(
        (one) => nameOf(one.piece) === nameOf(recipe.name) && (one.make ?? make) === make,
      );
      for (const [p, part] of own.entries()) {
        const { rows = [], boundOffIn } = was?.parts[p] ?? {};
        const colour = coloursOf({ restriped }, String(i), own, part, make);
        const wanted = [...rows, ...(boundOffIn === undefined ? [] : [boundOffIn])];
        const at = part.rows.findIndex(({ n }) => colour(n) !== wanted[n - 1]);
        if (at >= 0)
          differs(
            'colours',
            `${recipe.name} ${make}, ${part.name}, row ${at + 1}`,
            wanted[at] ?? 'none',
            colour(at + 1) ?? 'none',
          );
      }
    }
  }
}

function compareMakingUp(read: ReadPattern, size: WorkedSize, differs: Differs): void {
  const planned = asPlanned({ name: 'any', pieces: read.pieces.map(({ recipe }) => recipe) });
  if (!planned.ok) return;
  const { told: facts, unread } = readMakingUp(read);
  differs('making up not read', '', [], unread);
  const joints = proposed(planned.value, facts);
  const { worked, troubles } = workJoints(joints, planned.value);
  const now = saysJoints(joints, planned.value);
  const wanted = saysJoints(size.made.joints, size.garment);
  const sorted = (all: readonly string[]) => [...all].sort();
  if (!isDeepStrictEqual(sorted(now), sorted(wanted))) {
    const lost = wanted.filter((one) => !now.includes(one));
    const more = now.filter((one) => !wanted.includes(one));
    const of = [...new Set([...lost, ...more].map((one) => one.split(/[,:]/)[0]))].sort().join(' + ');
    differs(`joints (${of})`, `\n      ${lost.join('\n      ')}\n      `, '', more);
  } else differs('order of joints', '', wanted, now);
  differs('troubles', '', saysTroubles(size.made.troubles), saysTroubles(troubles));
  const [was, is] = [size.finished, finished(worked, planned.value)];
  for (const key of Object.keys(was) as (keyof Finished)[])
    differs(`measure ${key}`, '', rounded(was[key]), rounded(is[key]));
}

/** Whether more than one fabric of it was swatched: a text tells them all, so that it is read by its own. */
export const hasOtherGauges = ({ garment }: WorkedSize): boolean =>
  garment.pieces.some(({ recipe: { gauge, gauges = {} } }) =>
    Object.keys(gauges).some((fabric) => fabric !== gauge?.fabric),
  );

/** To a tenth of a mm. */
const rounded = (mm: number | undefined) => (mm === undefined ? undefined : Math.round(mm * 10) / 10);
