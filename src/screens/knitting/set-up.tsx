import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Card } from '../../ui/card/card.tsx';
import { saysEdge, saysSide } from '../../words/craft.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** What is done before row 1. */
export function SetUp({ part }: { readonly part: PlannedPart }) {
  return (
    <Card tone="place">
      <h2 class="set-up-head">{say('knitting.setUp')}</h2>
      {/* a long one is folded on a small screen, as long as it is not touched: the row's words and count are in sight */}
      <details class="set-up-fold">
        <summary class="set-up-work">{saysSetUp(part)}</summary>
      </details>
    </Card>
  );
}

function saysSetUp(part: PlannedPart): string {
  const { from, start, rows } = part;
  const needle = saysNeedle(rows[0]?.needle ?? part.sections[0]?.needle ?? 4);
  if ('castOn' in from) return say('knitting.setUpCastOn', { count: from.castOn, needle });
  if ('pickUp' in from) {
    const edges = from.pickUp.map(({ along, stitches }) =>
      say('knitting.setUpPickUpEdge', { count: stitches, along }),
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
