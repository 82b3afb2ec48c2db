import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Card } from '../../ui/card/card.tsx';
import { useShows } from '../../ui/screen/use-shows.ts';
import { say } from '../../words/say.ts';
import { saysSetUp } from '../../words/set-up.ts';

/** What is done before row 1. */
export function SetUp({ part }: { readonly part: PlannedPart }) {
  useShows('set-up');
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
