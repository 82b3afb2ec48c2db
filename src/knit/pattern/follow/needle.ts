import type { Build } from './build/build.ts';
import { setMark } from './build/part.ts';

export function doNeedle(build: Build, mm: number | undefined): undefined {
  if (mm !== undefined && mm > 0 && mm < 40) build.needle = mm;
  if (build.part && build.piece) {
    build.part.closed = true;
    if (build.part.fabric.label === 'rib') setMark(build.piece, 'rib', build.part);
  }
  return undefined;
}
