import { type FabricName, fabricNames } from '../knit/fabric.ts';
import type { Fault } from '../knit/fault.ts';
import { saysFabric } from './craft.ts';
import { saysLength } from './measures.ts';
import { sayIfKnown } from './say.ts';

/** Figures of a draft's faults and cautions that are lengths in mm; the others are counts. */
const lengths: ReadonlySet<string> = new Set(
  (
    'mm most least ease across underarm neck band length armhole waist width ' +
    'opens head cap depth arm cuff top front back hip hem'
  ).split(' '),
);

/** Why a garment cannot be drafted, or what to look at: needs the catalogues 'draft' and 'craft'. */
export function saysDraftFault({
  code,
  figures,
  sentence,
}: Pick<Fault, 'code' | 'figures' | 'sentence'>): string {
  const said = Object.fromEntries(
    Object.entries(figures).map(([name, value]) => [name, saysFigure(name, value)]),
  );
  return sayIfKnown('draft', code, said) ?? sentence;
}

function saysFigure(name: string, value: string | number): string | number {
  if (typeof value === 'number') return lengths.has(name) ? saysLength(value) : value;
  return fabricNames.includes(value as FabricName) ? saysFabric(value as FabricName) : value;
}
