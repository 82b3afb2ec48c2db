import type { FabricName } from '../../fabric.ts';
import { fault, ok, type Result, refuse } from '../../fault.ts';
import type { Section, Shaping } from '../recipe.ts';

/** What the rows to come of a section shall be in; what is not said stays. */
export interface Otherwise {
  readonly fabric?: FabricName;
  /** mm */
  readonly needle?: number;
  /** rows from one shaping at an edge to the next */
  readonly every?: number;
}

/** The section worked otherwise; a pattern's own words do not hold for another fabric. */
export function workedOtherwise(section: Section, { fabric, needle, every }: Otherwise): Result<Section> {
  const shaping: Shaping[] = [];
  for (const entry of section.shaping) {
    const laid = every === undefined ? ok(entry) : inRhythm(entry, every, section.rows);
    if (!laid.ok) return laid;
    shaping.push(laid.value);
  }
  const { words, measured, ...kept } = section;
  const isSame =
    (fabric === undefined || fabric === section.fabric) &&
    (needle === undefined || needle === section.needle);
  return ok({
    ...kept,
    // what was measured, and words of rows, are of the fabric that they were said of
    ...(isSame && measured !== undefined ? { measured } : {}),
    ...(isSame && words !== undefined && every === undefined ? { words } : {}),
    ...(fabric === undefined ? {} : { fabric }),
    ...(needle === undefined ? {} : { needle }),
    shaping,
  });
}

/** As many shapings, the first where it was. */
function inRhythm(entry: Shaping, every: number, rows: number): Result<Shaping> {
  if (entry.kind !== 'edge') return ok(entry);
  const times = entry.rows.length;
  const first = Math.min(...entry.rows);
  const mostTimes = every < 1 ? 0 : Math.floor((rows - first) / every) + 1;
  if (!Number.isSafeInteger(every) || times > mostTimes)
    return refuse(fault('shaping to come does not fit', { times, rows, mostTimes }));
  return ok({ ...entry, rows: entry.rows.map((_, i) => first + i * every) });
}
