import { makeInHand } from '../../app/in-hand/make-in-hand.ts';
import type { InHand } from '../../app/state.ts';
import type { Edit } from '../../knit/making-up/edit.ts';
import type { Asked } from '../../knit/making-up/mends.ts';
import type { Rework } from '../../knit/piece/rework/replan.ts';
import type { StandingGarment } from '../../knit/piece/standing.ts';
import { Card } from '../../ui/card/card.tsx';
import { PanelMap } from '../../ui/panel-map/panel-map.tsx';
import { saysHow } from '../../words/count.ts';
import { saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList, saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { Mends, Taken } from '../mends/mends.tsx';
import { type Colours, StripesDrawn } from './stripes-drawn.tsx';

/** Shaping rows listed before an ellipsis. */
const MOST_ROWS = 24;

interface NewPlanProps {
  readonly now: InHand;
  readonly made: Rework;
  /** the garment before and after it, with the mends that she took */
  readonly asked: Asked<StandingGarment> | undefined;
  readonly edits: readonly Edit[];
  readonly onTake: (edits: readonly Edit[]) => void;
  readonly onLeave: () => void;
}

/** What the new plan brings, what no longer matches and what mends it, before she takes it. */
export function NewPlan({ now, made, asked, edits, onTake, onLeave }: NewPlanProps) {
  const [first] = made.parts;
  if (!first) return null;
  const ahead = first.part.rows
    .slice(now.place.rows)
    .filter((row) => row.shaping.length > 0 && row.after > 0);
  const list =
    saysList(ahead.slice(0, MOST_ROWS).map((row) => saysNumber(row.n))) +
    (ahead.length > MOST_ROWS ? ' …' : '');
  const last = first.part.rows[first.part.rows.length - 1];
  return (
    <>
      <Card tone="place" label={say('count.newPlan')}>
        <div class="count-card">
          <h2>{say('count.newPlan')}</h2>
          <MakeDrawn now={now} parts={made.parts} />
          <p>{saysHow(withLengths(made.how))}</p>
          <p>{say('count.rowsWas', first.rows)}</p>
          <p>{ahead.length === 0 ? say('count.noShapings') : say('count.nextShapings', { list })}</p>
          {last && (
            <p>
              {say('count.endsWith', { stitches: saysStitches(last.after > 0 ? last.after : last.before) })}
            </p>
          )}
        </div>
      </Card>
      {asked && <Mends asked={asked} saysAll onTake={onTake} />}
      {asked && edits.length > 0 && <Taken edits={edits} garment={asked.after} onLeave={onLeave} />}
    </>
  );
}

interface MakeDrawnProps {
  readonly now: InHand;
  /** parts that are planned anew */
  readonly parts?: Rework['parts'];
  /** the row of the part in hand at which something begins */
  readonly row?: number | undefined;
  /** the colour of a row of a part, where it has one */
  readonly colours?: Colours;
}

/** The make in hand, by its new plan where it has one, filled up to the needle. */
export function MakeDrawn({
  now: { place, make: key, part: inHand },
  parts: anew = [],
  row,
  colours,
}: MakeDrawnProps) {
  const make = makeInHand();
  if (!make) return null;
  const parts = make.parts.map((part, index) => anew.find((one) => one.index === index)?.part ?? part);
  return (
    <PanelMap
      label={inHand.piece}
      parts={parts}
      worked={make.places.map(({ id, rows }) => (id === key ? place.rows : rows))}
      current={place.part}
      looked={row === undefined ? undefined : { part: place.part, row }}
      over={colours && <StripesDrawn parts={parts} colours={colours} />}
      sizePx={200}
    />
  );
}

const withLengths = ({ code, figures }: Rework['how']): Rework['how'] => {
  const { plannedMm, reachedMm } = figures;
  if (plannedMm === undefined || reachedMm === undefined) return { code, figures };
  return {
    code,
    figures: { ...figures, planned: saysLength(Number(plannedMm)), reached: saysLength(Number(reachedMm)) },
  };
};
