import type { LaidLine } from './boundary-of.ts';
import type { MakingUp } from './making-up.ts';
import type { MakingUpStep } from './step.ts';

/**
 * The steps that are to be sewn before a band is picked up and are not yet: seams between two pieces that it runs along.
 * The one that waits for the band comes after it in the order of the steps.
 */
export function seamsBefore(
  band: string,
  { steps, joined }: Pick<MakingUp, 'steps' | 'joined'>,
  ticked: ReadonlySet<string>,
): readonly MakingUpStep[] {
  const at = steps.findIndex((step) => step.kind === 'pick up' && step.band === band);
  const along = makesOf((joined.get(steps[at]?.id ?? '') ?? []).flatMap(({ lines }) => lines));
  return steps.slice(0, Math.max(0, at)).filter(({ id }) => {
    const crossed = (joined.get(id) ?? []).some(
      ({ joint, lines }) => joint.kind === 'seam' && isAcross(makesOf(lines), along),
    );
    return crossed && !ticked.has(id);
  });
}

const isAcross = (sewn: ReadonlySet<string>, along: ReadonlySet<string>): boolean =>
  sewn.size > 1 && [...sewn].every((make) => along.has(make));

const makesOf = (lines: readonly LaidLine[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ laid }) => laid.map(({ stretch }) => `${stretch.piece} ${stretch.make}`)));
