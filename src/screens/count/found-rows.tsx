import { useState } from 'preact/hooks';
import { setPlace } from '../../app/in-hand/count.ts';
import type { InHand } from '../../app/state.ts';
import { countAt } from '../../knit/piece/count/count-at.ts';
import type { Distinction, Found } from '../../knit/piece/find-place.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFabric, saysSide, saysStitches } from '../../words/craft.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList, saysNumber } from '../../words/numbers.ts';
import { saysRowRidge } from '../../words/ridge.ts';
import { say, sayIfKnown } from '../../words/say.ts';
import type { Told } from './seen-on-needle.ts';

/** Rows shown with a button each; more than these are only counted. */
const MOST_SHOWN = 6;
const MOST_TOLD = 3;

interface FoundRowsProps {
  readonly now: InHand;
  readonly found: Found;
  readonly observations: readonly Told[];
}

/** The rows that fit, what tells them apart, and the button that sets the place. */
export function FoundRows({ now, found, observations }: FoundRowsProps) {
  const [set, setSet] = useState<number>();
  const { rows } = found;
  if (observations.length === 0) return null;
  if (rows.length === 0) return <NoRow doubtful={found.doubtful.map((i) => observations[i]?.name ?? '')} />;
  const take = (worked: number) => void setPlace(worked, 'place').then((done) => done && setSet(worked));
  return (
    <section class="count-card" aria-label={say('count.fitsAll', { count: rows.length })}>
      <h2>{say('count.fitsAll', { count: rows.length })}</h2>
      {set !== undefined && (
        <Notice kind="done" live>
          {say('count.placeSet', { rows: set })}
        </Notice>
      )}
      {rows.slice(0, MOST_SHOWN).map((worked) => (
        <Card key={worked} tone="place">
          <div class="count-card">
            <p>{saysPlace(now.part, worked)}</p>
            <p class="count-soft">{saysStitches(countAt(now.part, worked) ?? 0)}</p>
            <Button icon="flag" wide onPress={() => take(worked)}>
              {say('count.hereIAm')}
            </Button>
          </div>
        </Card>
      ))}
      {found.next.length > 0 && <Apart now={now} found={found} />}
    </section>
  );
}

/** Stays in sight at the bottom while she fills in what she sees. */
export function FoundBar({ rows }: { readonly rows: readonly number[] }) {
  const near = rows
    .slice(0, MOST_SHOWN)
    .sort((a, b) => a - b)
    .map((row) => saysNumber(row));
  const list = rows.length > MOST_SHOWN ? '' : `: ${near.join(', ')}`;
  return (
    <p class="count-bar" role="status">
      <Shows what="count-bar" />
      {rows.length === 0 ? say('count.fitsNone') : `${say('count.fitsAll', { count: rows.length })}${list}`}
    </p>
  );
}

/** The ridge stands at the row that is worked in it, as on the row's screen; the next may begin another. */
function saysPlace(part: PlannedPart, worked: number): string {
  if (worked === 0) return say('count.rowsDone', { count: 0 });
  const row = saysRowRidge(part, worked);
  return worked < part.rows.length
    ? say('count.placeIs', { row, next: worked + 1 })
    : say('count.placeIsEnd', { rows: worked });
}

function NoRow({ doubtful }: { readonly doubtful: readonly string[] }) {
  return (
    <Notice kind="warning" title={say('count.fitsNone')}>
      {doubtful.map((what) => (
        <p key={what}>{say('count.doubtful', { what })}</p>
      ))}
    </Notice>
  );
}

function Apart({ now, found }: { readonly now: InHand; readonly found: Found }) {
  return (
    <>
      <h3>{say('count.tellsApart')}</h3>
      <ul class="count-list">
        {found.next.slice(0, MOST_TOLD).map((look) => (
          <li key={`${look.kind} ${look.edge}`}>
            <strong>{saysDistinction(look)}</strong>
            <br />
            {saysList(
              found.rows
                .slice(0, MOST_SHOWN)
                .map((row, i) => say('count.showsAt', { row, what: saysShown(look, i, now.part) })),
            )}
          </li>
        ))}
      </ul>
    </>
  );
}

function saysDistinction({ kind, edge, landmark = 0 }: Distinction): string {
  const key = edge === undefined || edge === 'either' ? `tell ${kind}` : `tell ${kind} ${edge}`;
  return sayIfKnown('count', key, { row: landmark }) ?? '';
}

function saysShown(look: Distinction, i: number, part: PlannedPart): string {
  const shown = look.shows[i] ?? '';
  if (look.kind === 'side') return saysSide(shown === 'RS' ? 'RS' : 'WS', true);
  if (look.kind === 'height') return saysLength(Number(shown));
  if (look.kind === 'section') return saysFabric(part.sections[Number(shown)]?.fabric ?? 'stocking');
  return Number(shown) < 0 ? say('count.noShaping') : String(shown);
}
