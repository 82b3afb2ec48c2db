import type { Item } from '../../row/read/notation.ts';
import type { Build, StitchPattern } from './build/build.ts';
import { likeOf, type Row } from './row.ts';

/** Rows before any cast-on define a stitch pattern called as the heading above them. */
export function definingHere(build: Build): NonNullable<Build['defining']> {
  const name = build.heading?.pattern || build.piece?.name || 'pattern';
  return begin(build, build.patterns.get(name) ?? unstated(name));
}

function begin(build: Build, pattern: StitchPattern): StitchPattern {
  build.patterns.set(pattern.name, pattern);
  build.defining = pattern;
  return pattern;
}

/** One of which no multiple is stated: any count will do until its rows are known. */
const unstated = (name: string): StitchPattern => ({
  name,
  of: 1,
  plus: 0,
  rows: new Map(),
  everyOther: undefined,
  lines: new Map(),
  stated: false,
});

/** 0 where a row without a label is one of a garment, by what stands above it or because it binds off. */
export const rowsWithoutLabel = (build: Build, { items }: Row): 0 | undefined =>
  build.pending !== undefined || items.some(bindsOff) ? 0 : undefined;

const bindsOff = (item: Item): boolean =>
  'items' in item ? item.items.some(bindsOff) : 'work' in item && item.work === 'bo';

/** A row of a stitch pattern that is being defined; nothing is knitted. */
export function defineRow(build: Build, defined: StitchPattern, said: Row): void {
  const label = said.label;
  const pattern = label?.rows[0] === 1 && defined.rows.has(1) ? nextPattern(build, defined) : defined;
  const last = Math.max(0, ...pattern.rows.keys());
  const numbers = label && label.rows.length > 0 ? label.rows : [last + 1];
  numbers.forEach((n, i) => {
    const items =
      said.like === undefined ? said.items : (pattern.rows.get(likeOf(said, i)) ?? pattern.everyOther ?? []);
    pattern.rows.set(n, items);
    pattern.lines.set(n, build.line);
  });
  if (label?.everyOther) pattern.everyOther = said.items;
  const first = numbers[0] ?? 1;
  if (label?.side) pattern.side ??= first % 2 === 1 ? label.side : label.side === 'RS' ? 'WS' : 'RS';
}

/** Another 'Row 1' begins another stitch pattern. */
function nextPattern(build: Build, before: StitchPattern): StitchPattern {
  let n = 2;
  while (build.patterns.has(`${before.name} ${n}`)) n += 1;
  return begin(build, unstated(`${before.name} ${n}`));
}
