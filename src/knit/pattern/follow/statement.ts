import { type Fault, fault } from '../../fault.ts';
import type { Side } from '../../row/step.ts';
import type { Said, Statement } from '../say/statement.ts';
import { type Build, nextSide } from './build/build.ts';
import { useCycle } from './build/cycle.ts';
import { isDone, setMark } from './build/part.ts';
import { inYarn } from './build/push-row.ts';
import { wantSide } from './build/want-side.ts';
import { doButtonholes, noHole } from './buttonholes.ts';
import { doCastOn } from './cast-on.ts';
import { doGauge, joinGauge } from './gauge.ts';
import { doHeading } from './heading.ts';
import { makesRows } from './makes-rows.ts';
import { doMultiple } from './multiple.ts';
import { nameRows } from './named-rows.ts';
import { doNeedle } from './needle.ts';
import { doOnNeedle } from './on-needle.ts';
import { doPickUp } from './pick-up.ts';
import { doRowOrDefine } from './row-or-define.ts';
import { doSlips } from './slips.ts';
import { doStripes, listDiffers } from './stripes.ts';
/** Does what a statement says; the statements after it help to tell a short row from a divided neck. */
export function doStatement(build: Build, said: Said, ahead: readonly Said[]): Fault | undefined {
  const { statement } = said;
  build.line = said.line;
  switch (statement.is) {
    case 'heading':
      doHeading(build, statement);
      return undefined;
    case 'note':
      if (statement.makes !== undefined && build.piece && (isDone(build.part) || !build.part))
        build.piece.makes = Math.max(statement.makes, build.piece.makes);
      if (statement.about === 'hole' && build.holes.length === 0 && !isDone(build.part)) return noHole();
      if (statement.about === 'pattern' && build.part) useCycle(build.part);
      if (statement.about === 'marker' && build.piece && build.part)
        setMark(build.piece, 'marker', build.part);
      return undefined;
    // where the last of them stands is what other pieces are worked to
    case 'stars':
      if (build.piece && build.part)
        setMark(build.piece, statement.three ? 'three stars' : 'stars', build.part);
      return undefined;
    case 'next side':
      return doNextSide(build, statement.side);
    case 'named rows':
      nameRows(build, statement.name);
      return listDiffers(build, statement.rows);
    case 'yarn':
      takeYarn(build, statement.name, statement.held);
      if (statement.all) build.strands = statement.name;
      return undefined;
    case 'buttonholes':
      return doButtonholes(build, statement, ahead);
    case 'slips':
      return doSlips(build, statement);
    case 'stripes':
      return doStripes(build, statement);
    case 'turn':
    case 'star':
      return undefined;
    // what was not begun beside what stands before it would be worked behind it
    case 'at the same time':
      return build.part?.rows.length &&
        ahead[0] &&
        makesRows(ahead[0].statement) &&
        !byLengths(ahead[0].statement)
        ? fault('place not known')
        : undefined;
    case 'repeat from stars':
      return fault('no rows to repeat');
    case 'needle':
      if (statement.yarn !== undefined) takeYarn(build, statement.yarn);
      return doNeedle(build, statement.mm);
    case 'gauge':
      doGauge(build, joinGauge(build, statement));
      return undefined;
    case 'multiple':
      doMultiple(build, statement);
      return undefined;
    case 'cast on':
      return doCastOn(build, statement.stitches, said.begins);
    case 'pick up':
      return doPickUp(build, statement);
    case 'stated':
      return undefined;
    case 'row':
      return doRowOrDefine(build, statement, ahead);
    case 'even':
      if (statement.wholly) build.wholly = statement.fabric;
      return statement.wholly && isDone(build.part) ? undefined : doOnNeedle(build, said, statement, ahead);
    default:
      return doOnNeedle(build, said, statement, ahead);
  }
}

/** Of such a shaping it is told where it is worked. */
const byLengths = (statement: Statement): boolean =>
  statement.is === 'shape' && statement.beats.some(({ everyMm }) => everyMm !== undefined);

/** The part in work goes on in that yarn; the one it was cast on in is said only where another comes. */
function takeYarn(build: Build, name: string, held = false): void {
  const { part } = build;
  if (part === undefined || isDone(part)) {
    build.begunIn = name;
    build.begunHeld = held;
    return;
  }
  part.stripes = undefined;
  const yarn = part.begunIn;
  if (name === (part.yarn ?? yarn)) return;
  if (part.yarn === undefined && yarn !== undefined) {
    part.rows.forEach((row, i) => {
      part.rows[i] = { ...row, yarn };
    });
    for (const section of part.sections) section.name = inYarn(section.name, yarn);
  }
  part.yarn = name;
  part.closed = true;
}

function doNextSide(build: Build, side: Side): Fault | undefined {
  const { part } = build;
  if (part === undefined || isDone(part) || wantSide(build, part, side)) return undefined;
  return fault('side differs', { saidSide: side, foundSide: nextSide(part) });
}
