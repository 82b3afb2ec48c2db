import { type FabricName, fabricNames } from '../knit/fabric.ts';
import type { Fault } from '../knit/fault.ts';
import { saysFabric, saysSide } from './craft.ts';
import { say, sayIfKnown } from './say.ts';

/**
 * What keeps a recipe from being knitted, in her language: needs the catalogues 'recipeFaults' and 'craft'.
 * A fault without a sentence here is said in the plain English that it carries.
 */
export function saysRecipeFault(fault: Fault): string {
  const row = fault.at.row === undefined ? {} : { row: fault.at.row };
  return sayIfKnown('recipeFaults', fault.code, { ...row, ...translated(fault.figures) }) ?? fault.sentence;
}

function translated(figures: Fault['figures']): Fault['figures'] {
  const entries = Object.entries(figures).map(([name, value]) => [name, saysFigure(name, value)] as const);
  return Object.fromEntries(entries);
}

function saysFigure(name: string, value: string | number): string | number {
  if (name === 'fabric' && isFabric(value)) return saysFabric(value);
  if (name === 'side' && (value === 'RS' || value === 'WS')) return saysSide(value);
  if (value === 'right') return say('recipeFaults.rightEdge');
  if (value === 'left') return say('recipeFaults.leftEdge');
  return value;
}

const isFabric = (value: string | number): value is FabricName => fabricNames.includes(value as FabricName);
