import { describe, expect, it } from 'vitest';
import type { Along, HandSeam, Joint, Stretch } from '../../../src/knit/making-up/joint.ts';
import { stepOfJoints } from '../../../src/knit/making-up/joint-steps.ts';
import { knittedPieces } from '../../../src/knit/making-up/knitted-piece.ts';
import { makingUpOf } from '../../../src/knit/making-up/making-up.ts';
import { PieceGroups } from '../../../src/knit/making-up/piece-groups.ts';
import { proposed } from '../../../src/knit/making-up/propose.ts';
import { easeOf } from '../../../src/knit/making-up/step.ts';
import { nothingTold } from '../../../src/knit/making-up/told.ts';
import { workJoints } from '../../../src/knit/making-up/work-making-up.ts';
import type { Recipe } from '../../../src/knit/piece/recipe.ts';
import { groups, part, piece, section, standing } from './by-hand.ts';
import { back, front, neckband, sleeve } from './pullover.ts';
import { raglan } from './shapes.ts';

/* Steps of a few joints that are given one by one, counted by hand. */

const stepOf = (
  pieces: readonly Recipe[],
  id: string,
  joints: readonly Joint[],
  open: readonly Joint[] = [],
) => {
  const garment = standing(...pieces);
  const own = workJoints(joints, garment).worked;
  const openings = workJoints(open, garment).worked;
  return stepOfJoints(id, own, new PieceGroups(garment.pieces.map(knittedPieces)), openings);
};

describe('a raglan line that goes on as an opening', () => {
  const lines = proposed(standing(...raglan), { ...nothingTold, seams: new Set(['raglan']) }).filter(
    (joint) => joint.kind === 'seam' && joint.of === 'raglan',
  );
  const asFar = (...at: readonly Stretch[]) => {
    const open = at.map((stretch): Joint => ({ kind: 'left free', line: [stretch], as: 'opening' }));
    const step = stepOf(raglan, 'set in sleeves', lines, open);
    return step?.kind === 'raglan' ? step.asFarAsOpening : 'no raglan';
  };
  const rightFront = { piece: 'Front', make: 1, part: 'Right', edge: 'right' } as const;

  it('is the one along whose edge something is left open, be it along one of its parts alone', () => {
    expect(asFar(rightFront)).toEqual(easeOf(8, 8));
    expect(asFar({ ...rightFront, part: 'Body' })).toEqual(easeOf(8, 8));
    expect(asFar({ piece: 'Back', make: 1, part: 'Back', edge: 'left' })).toEqual(easeOf(8, 8));
  });

  it('is none along another edge, part, make or piece', () => {
    expect(asFar()).toBeUndefined();
    expect(asFar({ ...rightFront, edge: 'left' })).toBeUndefined();
    expect(asFar({ ...rightFront, part: 'Left' })).toBeUndefined();
    expect(asFar({ ...rightFront, make: 2 })).toBeUndefined();
    expect(asFar({ ...rightFront, piece: 'Sleeve' })).toBeUndefined();
  });

  it('beside lines of which the sleeve’s rows are told first, then those of the body', () => {
    const [rear, fore, arm] = raglan as [Recipe, Recipe, Recipe];
    const higher = {
      ...fore,
      parts: fore.parts.map((one) => ({
        ...one,
        sections: one.sections.map((own) => ('part' in one.from ? { ...own, rows: own.rows + 2 } : own)),
      })),
    };
    const step = stepOf([rear, higher, arm], 'set in sleeves', lines);
    expect(step?.kind === 'raglan' && step.rows).toEqual(easeOf(8, 10));
  });

  it('tells its own rows beside those of the others', () => {
    const told = {
      ...nothingTold,
      seams: new Set(['raglan'] as const),
      opening: { of: 'raglan', rows: 3 } as const,
    };
    const garment = standing(...raglan);
    const { steps } = makingUpOf({ ...garment, joints: proposed(garment, told) });
    expect(steps.find(({ kind }) => kind === 'raglan')).toMatchObject({
      seams: 4,
      rows: easeOf(8, 8),
      asFarAsOpening: easeOf(5, 5),
      underarm: { stitches: 2, rows: 0 },
    });
  });
});

describe('the share that is meant of the edges of a band', () => {
  const pullover = [back, front, sleeve, neckband];
  const joint = proposed(standing(...pullover)).find(({ kind }) => kind === 'pick up');
  const percent = (...shares: readonly (number | undefined)[]) => {
    if (joint?.kind !== 'pick up') throw new Error('no band');
    const along = joint.along.map(({ line, stitches }, i): Along => {
      const share = shares[i % shares.length];
      return { line, stitches, ...(share !== undefined && { percent: share }) };
    });
    const step = stepOf(pullover, 'pick up Neckband', [{ ...joint, along }]);
    return step?.kind === 'pick up' ? step.percent : 'no band';
  };

  it('is told where it is one of all edges, and not all of them', () => {
    expect(percent(90)).toBe(90);
    expect(percent(110)).toBe(110);
    expect(percent(100)).toBeUndefined();
    expect(percent(undefined)).toBeUndefined();
    expect(percent(90, 95)).toBeUndefined();
    expect(percent(90, undefined)).toBeUndefined();
  });

  it('is of a band that there is', () => {
    expect(stepOf([back, front], 'pick up Neckband', joint ? [joint] : [])).toBeUndefined();
  });
});

describe('two edges that she joins', () => {
  const strip = (name: string) => piece(name, 'other', [part(name, 10, [section('strip', 12)])]);
  const notched = piece('Notched', 'other', [
    part('Notched', 10, [section('below', 6), section('above', 6, ...groups(1, 2))]),
  ]);
  const unit = (a: Stretch['edge'], b: Stretch['edge'], other: Recipe = strip('Flap')) => {
    const edge = (name: string, at: Stretch['edge']) => ({ piece: name, make: 1, part: name, edge: at });
    const byHand: HandSeam = {
      id: 's',
      a: [edge('Pocket', a)],
      b: [edge(other.name, b)],
      how: 'sewn',
    };
    const { steps } = makingUpOf({ ...standing(strip('Pocket'), other), byHand: [byHand] });
    const step = steps.find(({ kind }) => kind === 'join');
    return step?.kind === 'join' ? [step.unit, ...step.edges.map((one) => one?.count)] : [];
  };

  it('are held by rows where both have nothing else, by stitches likewise, and by lengths else', () => {
    expect(unit('left', 'right')).toEqual(['rows', 12, 12]);
    expect(unit('top', 'top')).toEqual(['stitches', 10, 10]);
    expect(unit('left', 'top')).toEqual(['mm', 0, 0]);
    // twelve rows, and two stitches bound off between them
    expect(unit('left', 'right', notched)).toEqual(['mm', 0, 0]);
    expect(unit('top', 'right', notched)).toEqual(['mm', 0, 0]);
  });
});

it('no joints are no step, nor are those that tell of no seam', () => {
  expect(stepOf([back, front], 'side seams', [])).toBeUndefined();
  const underarm: Joint = {
    kind: 'seam',
    of: 'underarm',
    a: [{ piece: 'Front', make: 1, part: 'Body', edge: 'right' }],
    b: [{ piece: 'Back', make: 1, part: 'Back', edge: 'left' }],
    how: 'mattress',
  };
  expect(stepOf([back, front], 'set in sleeves', [underarm])).toBeUndefined();
});
