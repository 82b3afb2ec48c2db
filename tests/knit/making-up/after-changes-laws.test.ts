import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design } from '../../../src/knit/garment/design.ts';
import { draft } from '../../../src/knit/garment/draft.ts';
import { type Edit, editedBy, type Knitted } from '../../../src/knit/making-up/edit.ts';
import type { Line } from '../../../src/knit/making-up/joint.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { answers } from '../../../src/knit/making-up/mends.ts';
import { unitOf } from '../../../src/knit/making-up/work-making-up.ts';
import { readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { asPlanned } from '../../../src/knit/piece/as-planned.ts';
import { regauge } from '../../../src/knit/piece/regauge/regauge.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';
import { writePattern } from '../../../src/knit/written/write-pattern.ts';
import { someDesign } from '../../arbitraries/design.ts';
import { told } from '../../told.ts';

/** RIDGELINE_DRAFTS=1000 for a whole sweep; a part of it in every run. */
const DRAFTS = Math.min(Number(process.env.RIDGELINE_DRAFTS ?? 8), 5000);

interface Drafted {
  readonly design: Design;
  readonly garment: StandingGarment;
}

const drafts: Drafted[] = [];

function draftedOf(design: Design): Drafted[] {
  const made = draft(design);
  if (!made.ok) return [];
  const { recipes, joints } = made.value;
  const planned = asPlanned({ name: 'any', pieces: recipes, joints });
  if (!planned.ok) throw new Error(told(planned.faults));
  return [{ design, garment: { ...planned.value, joints } }];
}

/**
 * The making up works, or says by name what it breaks: each seam that is counted has as many rows or stitches on both of its
 * edges, each band as many as rest for it, each cast-on edge has its place, or the trouble is told of that joint or edge.
 */
function neverSilent(garment: StandingGarment, said: string): void {
  const { worked, joints, troubles, steps } = makingUpOf(garment);
  const isTold = (index: number) => troubles.some((one) => 'joint' in one && one.joint === index);
  worked.forEach(({ joint, lines }, i) => {
    const [a, b] = lines;
    if (joint.kind === 'seam' && a && b) {
      const unit = unitOf[joint.of];
      if (unit === 'mm' || joint.of === 'lap') return;
      if (a[unit] !== b[unit]) expect(isTold(i), `${said}: ${joint.of} ${a[unit]} ${b[unit]}`).toBe(true);
    }
    if (joint.kind !== 'pick up') return;
    const band = garment.pieces.find(({ recipe }) => recipe.name === joint.piece)?.recipe.parts[0]?.from;
    const order = band && 'pickUp' in band ? band.pickUp : [];
    order.forEach(({ held, stitches }, at) => {
      const line = lines[at];
      if (held && line && line.stitches !== stitches)
        expect(isTold(i), `${said}: held ${stitches}`).toBe(true);
    });
  });
  const linesOf = joints.flatMap((joint): readonly Line[] => {
    if (joint.kind === 'seam') return [joint.a, joint.b];
    return joint.kind === 'pick up' ? joint.along.map(({ line }) => line) : [joint.line];
  });
  const used = new Set(
    linesOf.flat().map(({ piece, make, part, edge }) => JSON.stringify([piece, make, part, edge])),
  );
  for (const { recipe, makes } of garment.pieces)
    for (const { make, parts } of makes)
      for (const part of parts) {
        if (!('castOn' in part.from)) continue;
        const forgotten = troubles.some(
          (one) =>
            one.kind === 'forgotten' &&
            one.rest.piece === recipe.name &&
            one.rest.make === make &&
            one.rest.part === part.name,
        );
        const key = JSON.stringify([recipe.name, make, part.name, 'start']);
        expect(used.has(key) || forgotten, `${said}: ${recipe.name} ${make}`).toBe(true);
      }
  expect(steps.at(-1)?.kind).toBe('ends');
}

function* mended(
  before: StandingGarment,
  after: StandingGarment,
  inHand: string,
): Generator<StandingGarment> {
  let now = after;
  for (let taken = 0; taken < 4; taken += 1) {
    const mend = [...answers({ before, after: now, inHand })].flatMap(({ mends }) => mends)[0];
    if (!mend) return;
    now = mend.garment;
    yield now;
  }
}

const named = ({ design: { kind, armhole, neck } }: Drafted): string =>
  `${kind} ${armhole} ${neck.shape} ${neck.opening ?? ''} ${neck.middle ?? ''}`;

describe(`a garment after a change (${DRAFTS} random designs; RIDGELINE_DRAFTS for more)`, () => {
  beforeAll(
    () => {
      drafts.push(...fc.sample(someDesign(), { numRuns: DRAFTS }).flatMap(draftedOf));
      expect(drafts.length).toBeGreaterThan(DRAFTS / 2);
    },
    60_000 + DRAFTS * 400,
  );

  it('re-gauged piece by piece is made up, or says what does not meet', () => {
    let made = 0;
    for (const one of drafts)
      for (const by of [0.85, 1.2]) {
        const gauge = one.garment.pieces[0]?.recipe.gauge;
        if (!gauge) throw new Error('a draft has a gauge');
        const to = { ...gauge, stitches: gauge.stitches * by, rows: gauge.rows * by };
        const pieces = one.garment.pieces.map(({ recipe }) => regauge(recipe, to));
        const recipes = pieces.flatMap((piece) => (piece.ok ? [piece.value] : []));
        if (recipes.length < pieces.length) continue;
        const planned = asPlanned({ name: 'any', pieces: recipes });
        if (!planned.ok) throw new Error(told(planned.faults));
        made += 1;
        neverSilent({ ...planned.value, joints: one.garment.joints ?? [] }, `${named(one)} × ${by}`);
      }
    expect(made).toBeGreaterThan(DRAFTS / 4);
  }, 600_000);

  it('read back from its written pattern is made up by what its pieces are, or says what is left over', () => {
    let read = 0;
    for (const one of drafts) {
      const text = writePattern(
        { name: 'Any', pieces: one.garment.pieces.map(({ recipe }) => recipe) },
        { terms: 'US' },
      );
      if (!text.ok) throw new Error(told(text.faults));
      const pieces = readPattern(text.value).pieces.map(({ recipe }) => recipe);
      const planned = asPlanned({ name: 'any', pieces });
      if (!planned.ok) continue;
      read += 1;
      neverSilent(planned.value, named(one));
    }
    expect(read).toBeGreaterThan(DRAFTS / 3);
  }, 600_000);

  it('one make of a mirrored pair edited alone, half knitted, is told against its twin; mends keep the law', () => {
    let edited = 0;
    let mends = 0;
    for (const one of drafts) {
      const { garment } = one;
      const twin = garment.pieces.find(({ recipe }) => recipe.makes === 2 && recipe.role !== 'armhole band');
      const part = twin?.recipe.parts[0];
      const section = part?.sections.findIndex(({ name }) => name === 'body' || name === 'sleeve') ?? -1;
      const found = part?.sections[section];
      if (!twin || !part || !found) continue;
      const first = twin.makes[0]?.parts[0]?.sections[section]?.first ?? 1;
      const knitted: Knitted = new Map([[twin.recipe.name, { isBegun: true, rows: [[first], [first]] }]]);
      const edit: Edit = {
        kind: 'rows',
        piece: twin.recipe.name,
        makes: [2],
        part: part.name,
        section,
        called: found.name,
        by: 8,
      };
      const after = editedBy(garment, [edit], knitted);
      if (!after) continue;
      edited += 1;
      const said = `${named(one)} ${twin.recipe.name} 2`;
      neverSilent(after, said);
      const rows = (make: number) =>
        after.pieces
          .find(({ recipe }) => recipe.name === twin.recipe.name)
          ?.makes.find((own) => own.make === make)?.parts[0]?.rows.length ?? 0;
      expect(rows(2) - rows(1), said).toBe(8);
      const { troubles } = makingUpOf(after);
      const told = [...answers({ before: garment, after, knitted, inHand: twin.recipe.name })];
      expect(troubles.length + told.length, said).toBeGreaterThan(0);
      for (const now of mended(garment, after, twin.recipe.name)) {
        mends += 1;
        neverSilent(now, said);
      }
    }
    expect(edited).toBeGreaterThan(DRAFTS / 8);
    expect(mends).toBeGreaterThan(0);
  }, 600_000);
});
