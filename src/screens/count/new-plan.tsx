import { garmentInHand, type InHand } from '../../app/state.ts';
import { type Mismatch, mismatches, type PlannedPiece } from '../../knit/piece/rework/matches.ts';
import type { Rework } from '../../knit/piece/rework/replan.ts';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysHow } from '../../words/count.ts';
import { saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList, saysNumber } from '../../words/numbers.ts';
import { say, sayIfKnown } from '../../words/say.ts';
import { saysMake } from '../says-make.ts';

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
  const off = mismatchesOf(now, made);
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
            <p key={`${one.piece} ${one.part} ${one.what} ${one.section}`}>{saysMismatch(one)}</p>
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

function saysMismatch({ piece, what, section = '', was, now, other }: Mismatch): string {
  const isLength = what === 'sleeve and armhole';
  const say = (n: number) => (isLength ? saysLength(n) : n);
  return (
    sayIfKnown('count', `off ${what}`, { piece, section, was: say(was), now: say(now), other: say(other) }) ??
    ''
  );
}

/** Compared with every other copy and piece of the garment, as they are planned now. */
function mismatchesOf(now: InHand, made: Rework): Mismatch[] {
  const pieces = garmentInHand.value?.pieces ?? [];
  const all = pieces.flatMap(({ id, name, makes }) =>
    makes.map(({ make, parts }) => ({
      id,
      make,
      piece: { name: saysMake(name, '', make, makes.length), parts },
    })),
  );
  const isOwn = (one: { id: string; make: number }) =>
    one.id === now.place.piece && one.make === now.place.make;
  const before: PlannedPiece | undefined = all.find(isOwn)?.piece;
  if (!before) return [];
  const parts = before.parts.map((part, i) => made.parts.find(({ index }) => index === i)?.part ?? part);
  return mismatches(
    before,
    { ...before, parts },
    all.filter((one) => !isOwn(one)).map(({ piece }) => piece),
  );
}
