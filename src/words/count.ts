import { factsOf } from '../knit/fabric-facts.ts';
import type { Said } from '../knit/piece/count/advice.ts';
import type { Landmark } from '../knit/piece/count/landmarks.ts';
import type { Look, Seen } from '../knit/piece/count/look.ts';
import type { Explanation } from '../knit/piece/explain-count.ts';
import type { PlannedPart } from '../knit/piece/planned.ts';
import { saysEdge } from './craft.ts';
import { saysNumber } from './numbers.ts';
import { say, sayIfKnown } from './say.ts';
import { localeOf, speech } from './settings.ts';

/** Sentences about counts and places. All need the catalogues 'count' and 'craft'. */

const known = (key: string, figures: Readonly<Record<string, number | string>> = {}): string =>
  sayIfKnown('count', key, figures) ??
  sayIfKnown('count', key.split(' ').slice(0, -1).join(' '), figures) ??
  '';

export const saysCause = ({ cause }: Pick<Explanation, 'cause'>): string => known(`cause ${cause}`);

/** '21, 25 or 29' */
export const saysEither = (rows: readonly number[]): string =>
  new Intl.ListFormat(localeOf(speech.value), { type: 'disjunction' }).format(
    rows.map((row) => saysNumber(row)),
  );

const MOST_ROWS = 6;

/** What to look for on the fabric. */
export function saysSign({ cause, rows, between, times, edge, lookFor }: Explanation): string {
  const shown = rows.slice(0, MOST_ROWS).sort((a, b) => a - b);
  const list = saysEither(shown) + (rows.length > MOST_ROWS ? ' …' : '');
  const [from, to] = between;
  const above = from === 0 ? say('count.aboveStart') : say('count.aboveRow', { row: from });
  const span = from === 0 ? say('count.spanStart', { to }) : say('count.spanRows', { from, to });
  const kind = edge ?? lookFor.figures.way;
  return known(kind === undefined ? `sign ${cause}` : `sign ${cause} ${kind}`, {
    list,
    count: times,
    above,
    span,
  });
}

/** To row 0 is to the beginning. */
export const saysAdvice = ({ code, figures }: Said): string =>
  known(figures.row === 0 ? `do ${code} start` : `do ${code}`, {
    ...figures,
    count: figures.count ?? figures.rows ?? figures.off ?? 0,
  });

/** A share of what is likely, which is never all. */
export const saysShare = (share: number): string =>
  say('count.share', { share: saysNumber(Math.min(share, 0.99), { percent: true, digits: 0 }) });

/** What is needed in a field where no number is left: between which two. */
export const saysNeeded = (
  least: number,
  most: number,
  says: (value: number) => string = saysNumber,
): string => say('count.needsNumber', { least: says(least), most: says(most) });

export function saysLook(look: Look, part: PlannedPart, landmark: Landmark | undefined): string {
  return known(`look ${look.code}`, { landmark: saysLandmark(landmark, part), row: look.row ?? 0 });
}

export function saysLandmark(mark: Landmark | undefined, part: PlannedPart): string {
  if (mark === undefined) return say('count.mark start');
  return known(`mark ${mark.kind}`, {
    row: mark.row,
    before: part.sections[mark.section - 1]?.name ?? '',
    edge: mark.edge === undefined ? '' : saysEdge(mark.edge),
  });
}

/** One of the things that she may see, in words: 'right edge: 7 shapings; left edge: 6 shapings'. */
export function saysSeen(seen: Seen, part: PlannedPart, section: number): string {
  if (seen.trace !== undefined) return known(`trace ${seen.trace}`);
  if (seen.rows !== undefined) return saysRowsCounted(seen.rows, part, section);
  if (seen.spread !== undefined) return saysNumber(seen.spread);
  if (seen.castOn !== undefined) return saysNumber(part.start + seen.castOn);
  const edges = (['right', 'left'] as const)
    .map((edge) => saysEdgeSeen(seen, edge))
    .filter((said) => said !== '');
  return edges.join('; ');
}

function saysEdgeSeen(seen: Seen, edge: 'right' | 'left'): string {
  const times = seen[edge];
  const above = seen[`${edge}Above`];
  const said = [
    ...(times === undefined ? [] : [say('count.shapings', { count: times })]),
    ...(above === undefined
      ? []
      : [above < 0 ? say('count.noShaping') : say('count.rowsAbove', { count: above })]),
  ];
  if (said.length === 0 || (times === 0 && (above ?? -1) < 0)) return '';
  return say(edge === 'right' ? 'count.rightHas' : 'count.leftHas', { what: said.join(', ') });
}

/** Rows, with ridges beside them where the fabric has ridges. */
function saysRowsCounted(count: number, part: PlannedPart, section: number): string {
  const rows = say('craft.rows', { count });
  const fabric = part.sections[section]?.fabric;
  if (fabric === undefined || !factsOf(fabric).ridges) return rows;
  return say('count.rowsAndRidges', { rows, ridges: say('craft.ridges', { count: count / 2 }) });
}

/** How a rework is brought about, by its code. */
export const saysHow = ({ code, figures }: Said): string =>
  known(`how ${code}`, { ...figures, count: figures.off ?? 0 });
