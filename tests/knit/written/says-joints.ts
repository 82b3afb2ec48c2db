import { Boundaries, layLine } from '../../../src/knit/making-up/boundary-of.ts';
import type { Joint, Line } from '../../../src/knit/making-up/joint.ts';
import type { Trouble } from '../../../src/knit/making-up/work-making-up.ts';
import type { StandingGarment } from '../../../src/knit/piece/standing.ts';

/** A joint by the rows and stitches that it goes along, whatever its parts are called. */
export function saysJoints(
  joints: readonly Joint[],
  garment: Pick<StandingGarment, 'pieces'>,
): readonly string[] {
  const edges = new Boundaries(garment);
  const pieces = garment.pieces.map(({ recipe }) => recipe.name);
  const line = (own: Line): string =>
    layLine(edges, own)
      .laid.filter(({ from, to }) => from < to)
      .map(
        ({ stretch, part, from, to }) =>
          `${pieces.indexOf(stretch.piece)}.${stretch.make} ${stretch.edge} of ${part.start}/${part.rows.length} ${from}-${to}${stretch.reversed ? ' turned' : ''}`,
      )
      .join(' + ');
  return joints.map((joint) => {
    if (joint.kind === 'seam') return `${joint.of}, ${joint.how}: ${line(joint.a)} = ${line(joint.b)}`;
    if (joint.kind === 'left free') return `free ${joint.as}: ${line(joint.line)}`;
    const along = joint.along.map(
      (one) => `${one.stitches} (${one.percent ?? 100} of 100) along ${line(one.line)}`,
    );
    return `pick up ${pieces.indexOf(joint.piece)}.${joint.make}: ${along.join(' | ')}`;
  });
}

export const saysTroubles = (troubles: readonly Trouble[]): readonly string[] =>
  troubles.map((one) => `${one.kind} ${'joint' in one ? one.joint : ''}`);
