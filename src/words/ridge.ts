import { factsOf } from '../knit/fabric-facts.ts';
import type { PlannedPart } from '../knit/piece/planned.ts';
import { ridgeAt, ridgesIn } from '../knit/piece/ridges.ts';
import { saysNumber } from './numbers.ts';
import { say } from './say.ts';

/** What lies in ridges is counted in them. All need the catalogues 'lap' and 'craft'. */

/** 'ridge 18' of row 35; empty where the row lies in none. */
export function saysRidge(part: PlannedPart, row: number): string {
  const ridge = ridgeAt(part, row);
  return ridge === undefined ? '' : say('lap.ridge', { ridge });
}

/** '35', or '35 (ridge 18)': to be said after 'row'. */
export function saysRowRidge(part: PlannedPart, row: number): string {
  const ridge = saysRidge(part, row);
  return ridge === '' ? saysNumber(row) : say('lap.rowRidge', { row, ridge });
}

/** ' (5 ridges)' for rows `after` + 1 to `to`; empty where not all of them lie in ridges. */
export function saysRidgesIn(part: PlannedPart, after: number, to: number): string {
  const count = ridgesIn(part, after, to);
  return count === undefined ? '' : ` (${say('craft.ridges', { count })})`;
}

/** ', 20 ridges' for so many rows of a section; empty where its fabric has none. */
export function saysRidgesOf(part: PlannedPart, section: number, rows: number): string {
  const fabric = part.sections[section]?.fabric;
  return fabric === undefined || !factsOf(fabric).ridges
    ? ''
    : `, ${say('craft.ridges', { count: rows / 2 })}`;
}
