import { asItStands } from '../../app/garments/as-it-stands.ts';
import { garmentInHand, type InHand } from '../../app/state.ts';
import { type Consequence, consequences } from '../../knit/making-up/consequences.ts';
import type { Rework } from '../../knit/piece/rework/replan.ts';
import { standingMake } from '../../knit/piece/standing.ts';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysHow } from '../../words/count.ts';
import { saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList, saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { type Said, saysConsequence } from './says-consequence.ts';

/** Shaping rows listed before an ellipsis. */
const MOST_ROWS = 24;

/** What the new plan brings, and what no longer matches, before she takes it. */
export function NewPlan({ now, made }: { readonly now: InHand; readonly made: Rework }) {
  const [first] = made.parts;
  if (!first) return null;
  const ahead = first.part.rows
    .slice(now.place.rows)
    .filter((row) => row.shaping.length > 0 && row.after > 0);
  const list =
    saysList(ahead.slice(0, MOST_ROWS).map((row) => saysNumber(row.n))) +
    (ahead.length > MOST_ROWS ? ' …' : '');
  const last = first.part.rows[first.part.rows.length - 1];
  const off = broken(now, made);
  return (
    <>
      <Card tone="place" label={say('count.newPlan')}>
        <div class="count-card">
          <h2>{say('count.newPlan')}</h2>
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
      {off.length === 0 ? (
        <Notice kind="note">{say('count.matchesAll')}</Notice>
      ) : (
        <Notice kind="warning" title={say('count.noLonger')} live>
          {off.map((one) => (
            <SaidConsequence key={JSON.stringify(one)} {...saysConsequence(one)} />
          ))}
        </Notice>
      )}
    </>
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

const SaidConsequence = ({ what, mend }: Said) => (
  <p>
    {what} {mend}
  </p>
);

/** Compared with the garment as it stands: every joint before and after the new plan. */
function broken(now: InHand, made: Rework): readonly Consequence[] {
  const view = garmentInHand.value;
  if (!view) return [];
  const before = asItStands(view);
  const at = view.pieces.findIndex(({ id }) => id === now.place.piece);
  const pieces = before.pieces.map((piece, i) => {
    if (i !== at) return piece;
    const makes = piece.makes.map((make) => {
      if (make.make !== now.place.make) return make;
      const plans = make.parts.map((part, index) => made.parts.find((p) => p.index === index)?.part ?? part);
      return standingMake(piece.recipe, make.make, plans);
    });
    return { ...piece, makes };
  });
  return consequences(before, { ...before, pieces });
}
