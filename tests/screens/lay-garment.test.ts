import { describe, expect, it } from 'vitest';
import { draft } from '../../src/knit/garment/draft.ts';
import { sampleGarment } from '../../src/knit/garment/sample.ts';
import type { Laid } from '../../src/knit/making-up/boundary-of.ts';
import { type MakingUp, makingUpOf } from '../../src/knit/making-up/making-up.ts';
import type { WorkedJoint } from '../../src/knit/making-up/work-making-up.ts';
import { asPlanned } from '../../src/knit/piece/as-planned.ts';
import type { StandingGarment } from '../../src/knit/piece/standing.ts';
import { asDrawn, drawn } from '../../src/screens/making-up/draw-together.ts';
import { boundsOf, type LaidPiece, laidGarment, onTable } from '../../src/screens/making-up/lay-garment.ts';
import { edgeRuns, middleOf } from '../../src/ui/panel-map/edge-line.ts';
import { designs } from '../knit/garment/designs.ts';
import { even } from '../knit/garment/spelled.ts';

type Made = readonly [string, StandingGarment, MakingUp];

const standing: readonly Made[] = [
  ['the sample', sampleGarment] as const,
  ...Object.entries(designs).map(([name, design]) => {
    const made = draft({ ...even, ...design });
    if (!made.ok) throw new Error(`${name}: ${made.faults[0]?.code}`);
    return [name, { name, pieces: made.value.recipes, joints: made.value.joints }] as const;
  }),
].map(([name, garment]): Made => {
  const planned = asPlanned(garment);
  if (!planned.ok) throw new Error(`${name}: ${planned.faults[0]?.code}`);
  return [name, planned.value, makingUpOf(planned.value)];
});

/** The middle of a seam's edge on the table. */
function middle(laid: readonly LaidPiece[], line: readonly Laid[]) {
  const runs = line.flatMap((own) => {
    const piece = laid.find(({ name, make }) => name === own.stretch.piece && make === own.stretch.make);
    const shape = piece?.shape.parts[piece.parts.indexOf(own.part)];
    if (!piece || !shape) throw new Error(`${own.stretch.piece} does not lie on the table`);
    return edgeRuns(shape, asDrawn(own)).map((run) => run.map((point) => onTable(piece, point)));
  });
  const at = middleOf(runs);
  if (!at) throw new Error('an edge without length');
  return at;
}

const seams = ({ worked }: MakingUp, ...kinds: readonly string[]): readonly WorkedJoint[] =>
  worked.filter(({ joint }) => joint.kind === 'seam' && kinds.includes(joint.of));

const ends = (laid: readonly LaidPiece[], { lines: [a, b] }: WorkedJoint) =>
  [middle(laid, a?.laid ?? []), middle(laid, b?.laid ?? [])] as const;

const far = (laid: readonly LaidPiece[], seam: WorkedJoint): number => {
  const [[ax, ay], [bx, by]] = ends(laid, seam);
  return Math.hypot(ax - bx, ay - by);
};

describe.each(standing)('%s on the table', (_, garment, made) => {
  it('has its figures as large as the letters around it, in every column and at twice the text', () => {
    for (const width of [288, 358, 700])
      for (const em of [16, 24, 32]) {
        const height = 844;
        const { letter, view } = drawn(made, garment, new Set(), undefined, { width, height, em });
        // as the browser lays a drawing into its room, which is no higher than making-up.css lets it
        const scale = Math.min(width / view.width, Math.min(34 * em, 0.66 * height) / view.height);
        expect(letter * scale).toBeGreaterThan(0.8 * em);
        expect(letter * scale).toBeLessThan(em);
      }
  });

  const apart = laidGarment(garment, made.worked, []);
  const whole = laidGarment(garment, made.worked, made.worked);

  it('has every make once, none upon another while nothing is sewn', () => {
    const makes = garment.pieces.flatMap(({ recipe, makes: all }) =>
      all.map(({ make }) => `${recipe.name} ${make}`),
    );
    expect(apart.map(({ name, make }) => `${name} ${make}`).sort()).toEqual(makes.sort());
    for (const [i, one] of apart.entries())
      for (const other of apart.slice(i + 1)) {
        const [a, b] = [boundsOf(one), boundsOf(other)];
        const isApart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
        // boxes of a raglan's pieces may meet at their corners, where neither has cloth
        if (made.worked.every(({ joint }) => joint.kind !== 'seam' || joint.of !== 'raglan'))
          expect(isApart, `${one.name} ${one.make} on ${other.name} ${other.make}`).toBe(true);
      }
  });

  it('has each sleeve at the side of its armhole, and both edges of a side seam on one side', () => {
    const across = seams(made, 'armhole', 'raglan', 'underarm', 'side');
    for (const seam of across) {
      const [[a], [b]] = ends(apart, seam);
      expect(Math.sign(a), JSON.stringify(seam.joint)).toBe(Math.sign(b));
    }
  });

  it('comes together: the edges of a sewn shoulder, armhole or raglan line lie nearer than before, and close', () => {
    for (const seam of seams(made, 'shoulder', 'armhole', 'raglan')) {
      expect(far(whole, seam)).toBeLessThan(far(apart, seam));
      expect(far(whole, seam)).toBeLessThan(130);
    }
  });
});

it('a shoulder that is sewn brings the back to the front, and leaves the sleeves where they are beside them', () => {
  const [, garment, made] = standing[0] as Made;
  const shoulder = seams(made, 'shoulder').slice(0, 1);
  const [before, after] = [
    laidGarment(garment, made.worked, []),
    laidGarment(garment, made.worked, shoulder),
  ];
  expect(far(after, shoulder[0] as WorkedJoint)).toBeLessThan(far(before, shoulder[0] as WorkedJoint) - 50);
  const armhole = seams(made, 'armhole')[0] as WorkedJoint;
  expect(far(after, armhole)).toBeGreaterThan(40);
});
