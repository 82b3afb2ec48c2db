import { hrefTo } from '../../app/routes.ts';
import type { BasketEntry } from '../../app/state.ts';
import { Card } from '../../ui/card/card.tsx';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';
import { GarmentDrawing } from './garment-drawing.tsx';

/** A garment as its own small drawing: known without reading. */
export function GarmentCard({ entry }: { readonly entry: BasketEntry }) {
  const { garment, worked, at } = entry;
  const percent = saysNumber(garment.rows === 0 ? 0 : worked / garment.rows, { percent: true, digits: 0 });
  return (
    <Card href={hrefTo('garment', { garment: garment.id })}>
      <div class="garment-card">
        <GarmentDrawing
          garment={garment.id}
          seen={`${worked} ${at} ${garment.changedAt}`}
          label={say('workbasket.drawingOf', { garment: garment.name, percent })}
        />
        <p class="garment-card-words">
          <strong>{garment.name}</strong>
          <span class="quiet">
            {worked === 0
              ? say('workbasket.pieces', { count: garment.pieces })
              : `${say('workbasket.progress', { percent })} · ${say('workbasket.lastKnitted', { when: saysAgo(at, Date.now()) })}`}
          </span>
        </p>
      </div>
    </Card>
  );
}
