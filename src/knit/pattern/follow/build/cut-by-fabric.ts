import type { FabricName } from '../../../fabric.ts';
import { factsOf } from '../../../fabric-facts.ts';
import type { MadeRow } from './build.ts';
import { isNamed, nominal } from './fabric.ts';
import type { SectionBuild } from './section.ts';

/** Rows of a section that are of one fabric. */
export interface OfOneFabric {
  readonly name: string;
  readonly fabric: FabricName;
  readonly rows: readonly MadeRow[];
}

/**
 * A section cut where the rows that it spells out are seen to be of another fabric than those before.
 * @param seen what each of its rows is seen to be (`fabricsSeen`)
 */
export function cutByFabric(
  section: SectionBuild,
  rows: readonly MadeRow[],
  seen: readonly (FabricName | undefined)[],
): readonly OfOneFabric[] {
  const whole = [{ name: section.name, fabric: section.fabric, rows }];
  if (section.told) return whole;
  const fabrics = rows.map((row, i) => (isSpelled(row) ? seen[i] : undefined) ?? section.fabric);
  // what goes on for a length is one stretch
  if (section.stretch)
    return new Set(fabrics).size > 1 ? whole : whole.map((one) => named(one, fabrics[0] ?? section.fabric));
  const out: OfOneFabric[] = [];
  let from = 0;
  for (let i = 1; i <= rows.length; i += 1) {
    if (i < rows.length && fabrics[i] === fabrics[i - 1]) continue;
    out.push(named({ ...section, rows: rows.slice(from, i) }, fabrics[from] ?? section.fabric));
    from = i;
  }
  return out;
}

/** Its stitches stand in the text, and what they are called does not, or is stocking stitch. */
export const isSpelled = ({
  items,
  spelled = items !== undefined,
  own,
  hole,
  kind,
  fabric,
}: MadeRow): boolean =>
  kind === 'row' &&
  spelled &&
  (own === undefined || hole === true) &&
  (!isNamed(fabric) || nominal(fabric) === 'stocking') &&
  !items?.some((item) => 'work' in item && item.work === 'patt');

/** Names that say nothing but what the reader took the fabric for. */
const UNNAMED: readonly string[] = ['stocking', 'pattern'];

const named = ({ name, fabric: was, rows }: OfOneFabric, fabric: FabricName): OfOneFabric => ({
  name: fabric === was || !UNNAMED.includes(name) ? name : factsOf(fabric).drawsIn ? 'rib' : fabric,
  fabric,
  rows,
});
