import type { Statement } from '../say/statement.ts';
import type { Build } from './build/build.ts';

export function doMultiple(build: Build, said: Extract<Statement, { is: 'multiple' }>): void {
  const name = said.name || build.heading?.words || 'pattern';
  const pattern = {
    name,
    of: said.of,
    plus: said.plus,
    rows: new Map(),
    everyOther: undefined,
    lines: new Map(),
    stated: true,
  };
  build.patterns.set(name, pattern);
  build.defining = pattern;
}
