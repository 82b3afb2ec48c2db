import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Mutant, plant } from './plant.ts';

/**
 * Which mutants are no programs at all, since the compiler refuses them on their line. Many are planted at once, never
 * two on a line; one that makes an error elsewhere only is left among those that compile.
 */
export function refusedByTypes(root: string, mutants: readonly Mutant[]): Set<Mutant> {
  const refused = new Set<Mutant>();
  let left = [...mutants];
  while (left.length > 0) {
    const batch = onePerLine(left);
    left = left.filter((mutant) => !batch.includes(mutant));
    const lines = errorLines(root, batch);
    for (const mutant of batch) if (lines.has(`${mutant.file}:${mutant.line}`)) refused.add(mutant);
  }
  return refused;
}

/** Mutants that can stand in their sources together: their lines, to their last, do not meet. */
function onePerLine(mutants: readonly Mutant[]): Mutant[] {
  const taken = new Set<string>();
  return mutants.filter((mutant) => {
    const height = Math.max(...[mutant.before, mutant.after].map((text) => text.split('\n').length));
    const lines = Array.from({ length: height }, (_, index) => `${mutant.file}:${mutant.line + index}`);
    if (lines.some((line) => taken.has(line))) return false;
    for (const line of lines) taken.add(line);
    return true;
  });
}

function errorLines(root: string, batch: readonly Mutant[]): Set<string> {
  const files = [...new Set(batch.map(({ file }) => file))];
  const before = new Map(files.map((file) => [file, readFileSync(join(root, file), 'utf8')]));
  for (const [file, source] of before) {
    const here = batch.filter((mutant) => mutant.file === file).sort((a, b) => b.start - a.start);
    writeFileSync(
      join(root, file),
      here.reduce((text, mutant) => plant(text, withSameLines(mutant)), source),
    );
  }
  const tsc = join(process.cwd(), 'node_modules/typescript/bin/tsc');
  const { stdout } = spawnSync(process.execPath, [tsc, '-b', 'src'], { cwd: root, encoding: 'utf8' });
  for (const [file, source] of before) writeFileSync(join(root, file), source);
  return new Set(
    [...stdout.matchAll(/^(\S+?)\((\d+),\d+\): error/gm)].map(([, file, line]) => `${file}:${line}`),
  );
}

/** A change that takes lines away would move all that follows: they are put back as empty ones. */
function withSameLines(mutant: Mutant): Mutant {
  const lost = mutant.before.split('\n').length - mutant.after.split('\n').length;
  return { ...mutant, after: mutant.after + '\n'.repeat(Math.max(0, lost)) };
}
