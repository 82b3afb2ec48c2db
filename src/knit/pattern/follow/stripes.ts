import { type Fault, fault } from '../../fault.ts';
import type { Statement, Stripe } from '../say/statement.ts';
import type { Build, PartBuild } from './build/build.ts';
import { isDone } from './build/part.ts';
import { evenRows } from './build/run-rows.ts';
import { doEven } from './even.ts';

type Said = Extract<Statement, { is: 'stripes' }>;

/** What the name of a stitch pattern has within, where its rows are stripes. */
const STRIPED = ['stripe', 'color', 'colour'];

/** 'in stripes of 4 rows A, 2 rows B': from the next row on, until a yarn is named by itself. */
export function doStripes(build: Build, said: Said): Fault | undefined {
  const part = isDone(build.part) ? undefined : build.part;
  if (said.listed)
    return part && said.listed === 'on' ? workListed(build, part, said.of ?? []) : list(build, said);
  if (said.of) build.stripes = said.of;
  const { stripes, piece } = build;
  // rows of a stitch pattern may be its stripes
  const rows = [...build.patterns.keys()].find((name) => STRIPED.some((word) => name.includes(word)));
  if (!said.of && piece && part && (rows !== undefined || (!stripes && part.fabric.is === 'rows')))
    return doEven(build, piece, part, {
      is: 'even',
      fabric: rows === undefined ? { is: 'established' } : { is: 'pattern', words: rows, name: rows },
    });
  const of = stripes?.length ? stripes : part && asWorked(part);
  if (of === undefined) return fault('row not known', { rowName: 'stripe' });
  // said above a cast-on it is for all that is cast on below
  if (part === undefined) build.striped = of;
  else if (part.stripes?.of !== of)
    part.stripes = { of, first: of === stripes ? part.rows.length : firstOf(part) };
  return undefined;
}

/** 'Stripe sequence' and its stripes, on as many lines as there are. */
function list(build: Build, { of = [], listed }: Said): Fault | undefined {
  if (listed === 'on' && !build.stripes) return fault('nothing on the needle');
  // rows of a stitch pattern may stand below that title
  if (of.length === 0) build.heading = { words: 'stripe', pattern: 'stripe', divides: false };
  build.defining = undefined;
  build.stripes = listed === 'on' ? [...(build.stripes ?? []), ...of] : of;
  return undefined;
}

/** 'With B, work 2 rows' among the stripes that are listed. */
export function listOne(build: Build, rows: number): boolean {
  const said = build.recent.at(-1)?.statement;
  if (said?.is !== 'yarn' || build.stripes === undefined) return false;
  build.stripes = [...build.stripes, { rows, yarn: said.name }];
  return true;
}

/** 'These 9 rows form stripe pattern' below stripes of 8 rows. */
export function listDiffers({ stripes, part }: Build, rows: number | undefined): Fault | undefined {
  const workedRows = stripes?.reduce((sum, one) => sum + one.rows, 0);
  if (!isDone(part) || !workedRows || rows === undefined || rows === workedRows) return undefined;
  return fault('rows already worked', { workedRows, rows });
}

/** Rows in one yarn after the other. */
function workListed(build: Build, part: PartBuild, stripes: readonly Stripe[]): Fault | undefined {
  part.stripes = undefined;
  for (const { rows, yarn } of stripes) {
    part.yarn = yarn;
    part.closed = true;
    const wrong = evenRows(build, part, rows, 'even');
    if (wrong) return wrong;
  }
  return undefined;
}

/** Rows that were spelled out in their yarns, as stripes to go on with. */
function asWorked(part: PartBuild): Stripe[] | undefined {
  const of: Stripe[] = [];
  for (const { yarn = '' } of part.rows.slice(firstOf(part))) {
    const last = of.at(-1);
    if (last?.yarn === yarn) of[of.length - 1] = { yarn, rows: last.rows + 1 };
    else of.push({ yarn, rows: 1 });
  }
  return of.length > 1 && of[0]?.yarn !== of.at(-1)?.yarn ? of : undefined;
}

const firstOf = ({ rows }: PartBuild): number => {
  let first = rows.length;
  while (first > 0 && rows[first - 1]?.yarn !== undefined) first -= 1;
  return first;
};
