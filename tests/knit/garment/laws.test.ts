import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/knit/fault.ts';
import { type Design, isSince } from '../../../src/knit/garment/design.ts';
import { type Draft, draft } from '../../../src/knit/garment/draft.ts';
import { garmentKinds } from '../../../src/knit/garment/kinds/garments.ts';
import { plan } from '../../../src/knit/piece/plan.ts';
import type { Plan, PlannedPart, PlannedRow } from '../../../src/knit/piece/planned.ts';
import { workRow } from '../../../src/knit/row/work.ts';
import { xAt } from '../../../src/knit/shape/curve.ts';
import { loadFaults, saysFault } from '../../../src/words/fault.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { same } from '../../same.ts';
import { seed } from '../../seed.ts';
import { told } from '../../told.ts';
import { brokenBy } from '../making-up/made-up.ts';
import { AsKnitted, asked } from './as-knitted.ts';

await loadFaults();

/** RIDGELINE_DRAFTS=5000 for the whole sweep (some minutes on a phone-sized machine); a part of it in every run. */
const DRAFTS = Number(process.env.RIDGELINE_DRAFTS ?? 120);

interface Knitted {
  readonly design: Design;
  readonly draft: Draft;
  readonly plans: readonly Plan[];
}

const laws = new Map<string, (knitted: Knitted) => void>();
const broken = new Map<string, string[]>();
/** how much longer each cap is than asked, in the hundred */
const caps: number[] = [];
const tally = { drafted: 0, refused: 0 };

/** A law and its test; all laws look at the same sweep, so that each garment is drafted and planned once. */
function law(sentence: string, check: (knitted: Knitted) => void): void {
  laws.set(sentence, check);
  it(sentence, () => {
    expect(tally.drafted).toBeGreaterThan(3 * tally.refused);
    const found = broken.get(sentence) ?? [];
    expect(found.length, brokenBy(found, tally.drafted)).toBe(0);
  });
}

const REFUSAL = 'what cannot be knitted is refused with a sentence and the field that would mend it';
const PLANS = 'every piece of what is drafted plans';

function note(sentence: string, design: Design, check: () => void): void {
  try {
    check();
  } catch (error) {
    const found = broken.get(sentence) ?? [];
    broken.set(sentence, [...found, `${String(error)}\nseed ${seed}, design ${JSON.stringify(design)}`]);
  }
}

/** Everything is measured on the plans, row by row, not on the figures from which they were made. */
function sweep(): void {
  for (const design of fc.sample(someDesign(), { numRuns: DRAFTS })) {
    const made = draft(design);
    if (!made.ok) {
      tally.refused += 1;
      note(REFUSAL, design, () => refusedWell(made.faults));
      continue;
    }
    tally.drafted += 1;
    const plans: Plan[] = [];
    note(PLANS, design, () => {
      for (const recipe of made.value.recipes) {
        const planned = plan(recipe);
        if (!planned.ok) throw new Error(told(planned.faults));
        plans.push(planned.value);
      }
    });
    for (const [sentence, check] of laws)
      note(sentence, design, () => check({ design, draft: made.value, plans }));
  }
}

function refusedWell(faults: readonly Fault[]): void {
  expect(faults.length).toBeGreaterThan(0);
  for (const fault of faults) {
    expect(saysFault(fault)).not.toMatch(/[{}]|NaN|undefined/);
    expect(fault.at.field).toBeDefined();
  }
}

const pieceOf = (plans: readonly Plan[], name: string): Plan => {
  const found = plans.find((p) => p.name === name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};

const fabricRows = (part: PlannedPart, names: readonly string[]): number =>
  part.rows.filter((row) => names.includes(part.sections[row.section]?.name ?? '')).length;

const bodyParts = (piece: Plan): readonly PlannedPart[] =>
  piece.parts.filter((part) => !('part' in part.from) || part.from.edge === 'right');

const sideRows = (piece: Plan): number =>
  bodyParts(piece).reduce((sum, part) => sum + fabricRows(part, ['hem', 'body']), 0);

/** Stitches bound off in an edge's shoulder rows, and at the end of the part that has that edge. */
function shoulder(piece: Plan, edge: 'right' | 'left'): number {
  const along = piece.parts.filter((part) => !('part' in part.from) || part.from.edge === edge);
  const groups = along.flatMap((part) =>
    part.rows.filter((row) => part.sections[row.section]?.name === 'shoulder'),
  );
  const inGroups = groups
    .flatMap((row) => row.shaping)
    .reduce((sum, m) => sum + (m.kind === 'bind off' && m.edge === edge ? -m.by : 0), 0);
  const last = along[along.length - 1]?.rows.at(-1);
  // what is bound off in the last row, or rests after it
  return inGroups + (last?.after || last?.before || 0);
}

/** What a row does, seen from its start: edges by name do not matter, only which is which. */
const mirrorOf = (row: PlannedRow): string =>
  JSON.stringify(
    row.shaping
      .filter((m) => m.kind === 'edge')
      .map((m) => ({ ...m, edge: m.edge === 'right' ? 'left' : m.edge === 'left' ? 'right' : m.edge }))
      .sort((a, b) => a.edge.localeCompare(b.edge)),
  );
const asIs = (row: PlannedRow): string =>
  JSON.stringify(
    row.shaping
      .filter((m) => m.kind === 'edge')
      .slice()
      .sort((a, b) => a.edge.localeCompare(b.edge)),
  );

describe(`laws of drafts (${DRAFTS} random bodies, gauges and shapes; RIDGELINE_DRAFTS for more)`, () => {
  beforeAll(sweep, 60_000 + DRAFTS * 200);

  law(REFUSAL, () => undefined);
  law(PLANS, () => undefined);

  law(
    'every piece plans and knits without error, or the garment is refused with a sentence at a field',
    ({ plans }) => {
      for (const { parts, mirrorParts } of plans) {
        for (const part of [...parts, ...(mirrorParts ?? [])]) {
          let count = part.start;
          for (const row of part.rows) {
            same(row.before, count);
            const worked = workRow(row.steps, count);
            if (!worked.ok) throw new Error(told(worked.faults));
            same(worked.value.after, row.after);
            count = row.after;
          }
        }
      }
    },
  );

  law(
    'every edge stays within half a stitch of its curve, within one where groups are kept in order; the worst is reported',
    ({ design, draft: { edges } }) => {
      for (const edge of edges) {
        const slants = edge.name === 'side' || edge.name === 'sleeve';
        const raglan = design.armhole === 'raglan' && (edge.name === 'armhole' || edge.name === 'cap');
        const isV = isSince(2, design) && design.neck.shape === 'V' && edge.piece === 'Front';
        const together = design.tapers === 'together' && (slants || raglan || (isV && edge.name === 'neck'));
        if (edge.name === 'neck' && design.neck.shape === 'square' && edge.piece === 'Front') continue;
        const ordered =
          edge.name === 'cap' ||
          edge.name === 'neck' ||
          (edge.name === 'armhole' && design.armhole === 'set-in');
        const off = edge.at.map((at, pair) =>
          Math.abs(
            at - (xAt(edge.curve, ((2 * pair + 1) * 100) / edge.gauge.rows) * edge.gauge.stitches) / 100,
          ),
        );
        const worst = Math.max(...off);
        expect(worst).toBeCloseTo(edge.worst.stitches, 6);
        if (!together) expect(worst).toBeLessThanOrEqual((ordered ? 1 : 0.5) + 1e-6);
      }
    },
  );

  law(
    'the edges that are reported are the edges of the plan: a back has twice as many stitches as its half outline',
    ({ draft: { edges }, plans }) => {
      const back = pieceOf(plans, 'Back').parts[0];
      const hem = back ? fabricRows(back, ['hem']) : 0;
      for (const edge of edges.filter((e) => e.piece === 'Back' && e.name !== 'neck')) {
        edge.at.forEach((at, pair) => {
          const row = back?.rows[2 * (edge.from + pair) + 1];
          const section = row ? back?.sections[row.section]?.name : undefined;
          if (row && section !== 'bind off' && section !== 'shoulder') same(row.after, 2 * at);
        });
      }
      expect(hem % 2).toBe(0);
    },
  );

  law(
    'front and back agree at the shoulders and along the sides, both shoulders of a piece too',
    ({ design, draft: { edges, matches }, plans }) => {
      const back = pieceOf(plans, 'Back');
      const front = pieceOf(plans, 'Front');
      expect(sideRows(front)).toBe(sideRows(back));
      expect(matches.filter((m) => !m.agrees)).toEqual([]);
      const shaped = (piece: string): boolean => edges.some((e) => e.piece === piece && e.name === 'neck');
      if (design.armhole === 'raglan' || !shaped('Back') || !shaped('Front')) return;
      expect(shoulder(front, 'right')).toBe(shoulder(back, 'right'));
      expect(shoulder(back, 'left')).toBe(shoulder(back, 'right'));
      if (!garmentKinds[design.kind].open) expect(shoulder(front, 'left')).toBe(shoulder(front, 'right'));
    },
  );

  law(
    'sleeve and armhole agree: twice the depth beside the stitches for its seam, or the same rows of a raglan',
    ({ design, draft: { edges, recipes }, plans }) => {
      if (!garmentKinds[design.kind].sleeves) return;
      const sleeve = pieceOf(plans, 'Sleeve').parts[0];
      const back = pieceOf(plans, 'Back');
      const gauge = recipes[0]?.gauge ?? { stitches: 1, rows: 1 };
      if (!sleeve) throw new Error('a sleeve has a part');
      const armholeRows = edges.find((e) => e.piece === 'Back' && e.name === 'armhole')?.at.length ?? 0;
      // a small sleeve with a loose wrist may narrow towards the armhole: what meets it is the top, not the widest row
      const rows = sleeve.rows.filter((r) => sleeve.sections[r.section]?.name !== 'cuff' && r.after > 0);
      const top =
        (design.sleeve.direction === 'top down' ? rows[0]?.before : rows.at(-1)?.after) ?? sleeve.start;
      if (design.armhole === 'drop' || design.armhole === 'indented') {
        const seams = isSince(2, design) && design.seamStitch ? 2 : 0;
        const off = ((top - seams) * 100) / gauge.stitches - (2 * 2 * armholeRows * 100) / gauge.rows;
        expect(Math.abs(off)).toBeLessThanOrEqual(100 / gauge.stitches);
      }
      if (design.armhole === 'raglan') {
        expect(fabricRows(sleeve, ['raglan'])).toBe(
          back.parts.flatMap((p) => ('part' in p.from ? [] : [fabricRows(p, ['raglan'])]))[0],
        );
      }
    },
  );

  law(
    'left and right are mirror images: both halves of a parted panel shape on the same rows, both edges of a sleeve alike',
    ({ plans }) => {
      for (const { name, parts, mirrorParts } of plans) {
        const right = parts.find((p) => 'part' in p.from && p.from.edge === 'right');
        const left = parts.find((p) => 'part' in p.from && p.from.edge === 'left');
        if (right && left) {
          // the left one begins with what is bound off in the middle of the neck
          const level = left.rows[0]?.shaping.find((m) => m.kind === 'bind off' && m.edge === 'right');
          expect(left.start + (level?.by ?? 0)).toBe(right.start);
          right.rows.forEach((row, i) => {
            const other = left.rows[i];
            if (other) same(mirrorOf(other), asIs(row));
          });
        }
        if (mirrorParts)
          expect(mirrorParts.map((p) => p.rows.length)).toEqual(parts.map((p) => p.rows.length));
        if (name === 'Sleeve') {
          for (const row of parts[0]?.rows ?? []) same(mirrorOf(row), asIs(row));
        }
      }
    },
  );

  law(
    'finished measurements, counted on the plans and reckoned by the swatch, are those asked for in the design: to less than two rows, and to one stitch at most',
    ({ design, draft: made, plans }) => {
      const knitted = new AsKnitted(design, made, plans);
      for (const { askedMm, madeMm, unit, unitMm, measure } of made.roundings) {
        const wanted =
          (measure === 'sleeve length' ? knitted.askedSleeve() : undefined) ?? asked(design, measure);
        const got = knitted.made(measure);
        if (wanted !== undefined) expect(askedMm, `${measure} asked`).toBeCloseTo(wanted, 6);
        if (got !== undefined) expect(madeMm, `${measure} as knitted`).toBeCloseTo(got, 6);
        // widths that lie symmetrically on one another are all even or all odd: one stitch where they ask for both
        const off = Math.abs((wanted ?? askedMm) - (got ?? madeMm)) / unitMm;
        expect(off, measure).toBeLessThanOrEqual(unit === 'rows' ? 2 : 1 + 1e-9);
      }
    },
  );

  law(
    'a cap is as long as the armhole that it is sewn to, with the ease asked for, along the knitted edge of both: to a row of its height and a stitch of either edge',
    ({ design, draft: made, plans }) => {
      if (design.armhole !== 'set-in' || !garmentKinds[design.kind].sleeves) return;
      const knitted = new AsKnitted(design, made, plans);
      const { cap, armhole } = knitted.seam();
      const wanted = armhole * (1 + design.sleeve.capEase / 100);
      const { stitches, rows } = knitted.gauge(design.fabric);
      caps.push((100 * (cap - wanted)) / wanted);
      expect(Math.abs(cap - wanted), `${cap} mm, ${armhole} mm`).toBeLessThan(100 / rows + 200 / stitches);
    },
  );

  it('all caps together are off by less than one and a half in the hundred, mostly shorter: a slant cuts the corners of its curve', () => {
    expect(caps.length).toBeGreaterThan(DRAFTS / 20);
    expect(Math.abs(caps.reduce((sum, one) => sum + one, 0) / caps.length)).toBeLessThan(1.5);
  });
});
