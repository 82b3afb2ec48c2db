import type { Build, PartBuild } from './build/build.ts';
import { facesOf } from './build/cycle.ts';

/** The rows of the cycle in hand as a stitch pattern of that name, for this piece and those after it. */
export function nameRows(build: Build, name: string): void {
  const { cycle } = build.part ?? {};
  if (!cycle || name === '') return;
  build.patterns.set(name, {
    name,
    of: 1,
    plus: 0,
    rows: new Map(cycle.rows),
    everyOther: cycle.everyOther,
    lines: new Map(),
    faces: facesOf(build.part as PartBuild, cycle.first, cycle.rows.size),
  });
}
