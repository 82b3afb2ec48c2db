import type { PlannedPart } from '../knit/piece/planned.ts';
import { saysEdge, saysSide } from './craft.ts';
import { saysNeedle } from './needle.ts';
import { saysList } from './numbers.ts';
import { say } from './say.ts';

/** What is done before row 1 of a part, each stretch of a pick-up by its name and count. Needs the catalogues 'knitting' and 'craft'. */
export function saysSetUp(part: PlannedPart): string {
  const { from, start, rows } = part;
  const needle = saysNeedle(rows[0]?.needle ?? part.sections[0]?.needle ?? 4);
  if ('castOn' in from) return say('knitting.setUpCastOn', { count: from.castOn, needle });
  if ('pickUp' in from) {
    const edges = from.pickUp.map(({ along, stitches, held }) =>
      say(held ? 'knitting.setUpHeldEdge' : 'knitting.setUpPickUpEdge', { count: stitches, along }),
    );
    return say('knitting.setUpPickUp', { list: saysList(edges), total: start, needle });
  }
  return say('knitting.setUpTake', {
    count: from.stitches,
    edge: from.edge === 'middle' ? say('knitting.atMiddle') : saysEdge(from.edge),
    part: from.part,
    needle,
    first: saysSide(rows[0]?.side ?? 'RS', true),
  });
}
