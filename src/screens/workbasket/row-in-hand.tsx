import { useEffect } from 'preact/hooks';
import { drawings } from '../../app/garments/drawings.ts';
import { openDrawing } from '../../app/garments/open-garments.ts';
import { nextMake } from '../../app/in-hand/next-make.ts';
import { hrefTo } from '../../app/routes.ts';
import type { GarmentView, InHand } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysAgo } from '../../words/time.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

/** The way back to the row in hand: one touch. */
export function RowInHand({ now }: { readonly now: InHand }) {
  const { place, part, garment } = now;
  useEffect(() => void openDrawing(place.garment), [place.garment, place.seq]);
  const view = drawings.value.get(place.garment);
  const piece = view?.pieces.find(({ id }) => id === place.piece);
  const make = piece?.makes.find((copy) => copy.make === place.make);
  const rows = saysNumber(place.total);
  return (
    <Card tone="place" label={say('workbasket.inHand')}>
      <div class="in-hand-card">
        <div class="in-hand">
          <div class="in-hand-drawing">
            <PieceThumb
              parts={make?.parts ?? [part]}
              worked={make?.places.map((p) => p.rows) ?? [place.rows]}
            />
          </div>
          <div class="in-hand-words">
            <p class="in-hand-garment">{garment.name}</p>
            <p class="in-hand-part">
              {saysMake(part.piece, part.name, place.make, piece?.recipe ?? place.make)}
            </p>
            <p>
              {place.rows < place.total
                ? say('workbasket.rowNext', { row: place.rows + 1, rows })
                : say('workbasket.partDone', { rows })}
            </p>
            <p class="quiet">{say('workbasket.lastKnitted', { when: saysAgo(place.at, Date.now()) })}</p>
          </div>
        </div>
        {place.rows < place.total ? (
          <Button kind="main" icon="needle" wide href={hrefToMake(place.id)}>
            {say('workbasket.continue')}
          </Button>
        ) : (
          view && <Next view={view} now={now} />
        )}
      </div>
    </Card>
  );
}

/** What is done is not knitted on: the next of the garment, or its making up. */
function Next({ view, now: { place } }: { readonly view: GarmentView; readonly now: InHand }) {
  const next = nextMake(view, place);
  const what = next && saysMake(next.piece, next.part, next.place.make, next.recipe);
  const href = next ? hrefToMake(next.place.id) : hrefTo('makingUp', { garment: place.garment });
  return (
    <Button kind="main" icon={next ? 'needle' : 'onward'} wide href={href}>
      {what === undefined ? say('workbasket.sewUp') : say('workbasket.next', { what })}
    </Button>
  );
}
