import type { Rest } from '../../knit/making-up/boundary-of.ts';
import { type Finished, finished, neckWorn } from '../../knit/making-up/finished.ts';
import type { MakingUp } from '../../knit/making-up/making-up.ts';
import type { Trouble } from '../../knit/making-up/work-making-up.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { Group } from '../../ui/group/group.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { saysEdgeOf } from './says-edge.ts';

/** What the joined garment measures, as far as its joints tell. */
export function FinishedMeasures({ made, garment }: { made: MakingUp; garment: StandingGarment }) {
  const measures = finished(made.worked, garment);
  if (measures.chest === undefined) return null;
  return (
    <Group title={say('makingUp.finished')}>
      <FinishedLines measures={measures} />
    </Group>
  );
}

/** Round the chest of the largest child in the tables (src/knit/garment/bodies.ts, 32½ in) with 100 mm of ease, mm. */
const CHILD_MM = 925;

/** What a child's garment asks of its neck: said of one that a child may wear, and where nobody knows how wide it is. */
export function ForChild({ made, garment }: { made: MakingUp; garment: StandingGarment }) {
  const { chest } = finished(made.worked, garment);
  if (chest !== undefined && chest > CHILD_MM) return null;
  return <Notice kind="warning">{say('makingUp.cords')}</Notice>;
}

/** Each measure that is known, and what of them the seams take. */
export function FinishedLines({ measures }: { readonly measures: Finished }) {
  const { chest, length, napeToCuff, upperArm, wrist } = measures;
  const lines = [
    ['makingUp.finishedChest', chest],
    ['makingUp.finishedLength', length],
    ['makingUp.finishedNape', napeToCuff],
    ['makingUp.finishedArm', upperArm],
    ['makingUp.finishedWrist', wrist],
    ['makingUp.finishedNeck', neckWorn(measures)],
  ] as const;
  return (
    <>
      <ul>
        {lines.map(
          ([key, mm]) => mm !== undefined && <li key={key}>{say(key, { length: saysLength(mm) })}</li>,
        )}
      </ul>
      <p>{say('makingUp.finishedSeams')}</p>
    </>
  );
}

/** Edges that nothing is joined to, and joints that cannot be as they stand. Lengths that differ are said in their steps. */
export function WhatIsOff({ made }: { made: MakingUp }) {
  const off = made.troubles.flatMap((trouble) => saysTrouble(trouble, made));
  const left = made.troubles.flatMap((trouble) =>
    trouble.kind === 'forgotten' && isSewn(trouble.rest, made) ? [saysRest(trouble.rest)] : [],
  );
  return (
    <>
      {off.length > 0 && <Lines title={say('makingUp.offTitle')} lines={off} />}
      {left.length > 0 && <Lines title={say('makingUp.forgotten')} lines={left} />}
    </>
  );
}

const Lines = ({ title, lines }: { title: string; lines: readonly string[] }) => (
  <Notice kind="note" title={title}>
    {[...new Set(lines)].map((line) => (
      <p key={line}>{line}</p>
    ))}
  </Notice>
);

function saysTrouble(trouble: Trouble, { joints }: MakingUp): string[] {
  switch (trouble.kind) {
    case 'pick up': {
      const joint = joints[trouble.joint];
      const { stitches, fit } = trouble;
      return joint?.kind === 'pick up'
        ? [say('makingUp.offPickUp', { band: joint.piece, stitches, fit })]
        : [];
    }
    case 'used twice':
      return [say('makingUp.offTwice', { piece: trouble.at.piece })];
    case 'not there yet':
      return [say('makingUp.offNotYet', { piece: trouble.at.piece })];
    default:
      return [];
  }
}

/** A piece that is sewn to nothing at all (a scarf, a pocket to come) is not asked about. */
const isSewn = ({ piece }: Rest, { joints }: MakingUp): boolean =>
  joints.some(
    (joint) => joint.kind === 'seam' && [...joint.a, ...joint.b].some((one) => one.piece === piece),
  );

function saysRest({ piece, part, edge, rows, stitches }: Rest): string {
  const place = { piece, edge: saysEdgeOf({ piece, part, edge }) };
  return rows > 0
    ? say('makingUp.forgottenRows', { ...place, count: rows })
    : say('makingUp.forgottenStitches', { ...place, count: stitches });
}
