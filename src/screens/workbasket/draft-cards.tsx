import './draft-cards.css';
import { useEffect } from 'preact/hooks';
import { drafts, openDrafts } from '../../app/drafts/editor/drafts.ts';
import { hrefTo } from '../../app/routes.ts';
import { Card } from '../../ui/card/card.tsx';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';

/** What she was typing at and has not saved: the way back to it. */
export function DraftCards() {
  useEffect(() => void openDrafts(), []);
  const now = Date.now();
  if (drafts.value.length === 0) return null;
  return (
    <section class="shelf">
      <h2>{say('workbasket.typing')}</h2>
      <ul class="shelf-list shelf-plain">
        {drafts.value.map(({ garment, name, at, isNew }) => (
          <li key={isNew ? '' : garment}>
            <Card tone="resting" href={isNew ? hrefTo('newGarment') : hrefTo('editGarment', { garment })}>
              <strong>{name.trim() || say('workbasket.typingUnnamed')}</strong>
              <p class="quiet">{say('workbasket.typedLast', { when: saysAgo(at, now) })}</p>
            </Card>
          </li>
        ))}
      </ul>
    </section>
  );
}
