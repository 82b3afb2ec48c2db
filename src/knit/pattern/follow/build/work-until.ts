import { type Fault, fault } from '../../../fault.ts';
import { otherSide } from '../../../row/step.ts';
import type { Until } from '../../say/how-far.ts';
import type { Build, PartBuild, PieceBuild } from './build.ts';
import { countDiffers } from './compare.ts';
import { endDiffers } from './end-differs.ts';
import { endShaping, evenRows, finishBackground } from './run-rows.ts';
import { endSideOf, targetOf } from './target.ts';
import { wantSide } from './want-side.ts';

export function workUntil(build: Build, piece: PieceBuild, part: PartBuild, until: Until): Fault | undefined {
  if (until.is === 'count') return untilCount(build, part, until.stitches);
  if (until.is === 'rows' && part.rows.length === 0) beginSo(build, piece, part, until);
  const target = targetOf(build, piece, part, until);
  if (target === undefined) return noSuchPlace();
  if (target.stretch === undefined) {
    const wrong = evenRows(build, part, target.rows, 'even');
    return wrong ?? (until.is === 'rows' ? endDiffers(piece, part, until) : undefined);
  }
  part.closed = true;
  const first = part.rows.length;
  const wrong =
    evenRows(build, part, target.rows, 'stretch') ??
    (target.stretch.open ? endShaping(build, part, target.stretch.endSide) : undefined);
  const section = part.sections.at(-1);
  if (section && part.rows.length > first && section.first >= first) section.stretch = target.stretch;
  else if (section && target.rows === 0)
    part.sections.push({
      name: part.fabric.label,
      fabric: section.fabric,
      needle: build.needle,
      first: part.rows.length,
      stretch: target.stretch,
    });
  part.closed = true;
  if (wrong === undefined && target.overMm !== undefined && until.is === 'length') {
    const figures = { wantedMm: Math.round(until.mm), overMm: Math.round(target.overMm) };
    return fault('longer already', figures);
  }
  return wrong;
}

/** 'When there are 50 sts, …': what goes on beside is worked to its end, and another count is told. */
function untilCount(build: Build, part: PartBuild, stitches: number): Fault | undefined {
  const wrong = part.live === stitches ? undefined : finishBackground(build, part);
  return wrong ?? (part.live === stitches ? undefined : countDiffers(stitches, part.live));
}

/** '3 rows, ending with a WS row' behind a cast-on begin with a WS row. */
function beginSo(
  build: Build,
  piece: PieceBuild,
  part: PartBuild,
  until: Extract<Until, { is: 'rows' }>,
): void {
  const end = endSideOf(piece, part, until);
  if (end !== undefined && part.parent === undefined)
    wantSide(build, part, until.n % 2 === 1 ? end : otherSide(end));
}

const noSuchPlace = (): Fault => fault('place not known');
