import { pace, timeFor } from '../../progress/pace.ts';
import { type Sitting, sittings } from '../../progress/sittings.ts';
import { Card } from '../../ui/card/card.tsx';
import { saysStitches } from '../../words/craft.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysDate, saysDuration, saysMoment } from '../../words/time.ts';
import type { CountPageProps } from './count-page.ts';
import { SittingsPlot } from './sittings-plot.tsx';

const WEEK_MS = 7 * 24 * 3_600_000;
const WEEKS_LOOKED_AT = 4;
/** With less knitting than this in a week no day can be foretold. */
const LEAST_WEEKLY_MS = 15 * 60_000;
const MOST_LISTED = 20;

/** How fast, how long still, and when she knitted. */
export function PacePage({ now, entries }: CountPageProps) {
  const { part, place } = now;
  const fast = pace(entries, (entry) => part.rows[entry.row - 1]?.before ?? 0);
  const left = part.rows.slice(place.rows).reduce((sum, row) => sum + row.before, 0);
  const sat = sittings(entries).filter((sitting) => sitting.rows > 0);
  const leftMs = fast === undefined ? 0 : timeFor(left, fast);
  const weeklyMs = perWeek(sat, Date.now());
  return (
    <>
      <Card>
        <p>{say('count.rowsDone', { count: place.rows })}</p>
        <dl class="count-figures">
          {fast !== undefined && (
            <>
              <dt>{say('pace.paceRows')}</dt>
              <dd>{saysNumber(fast.rowsPerHour, { digits: 1 })}</dd>
              <dt>{say('pace.paceStitches')}</dt>
              <dd>{saysNumber(fast.stitchesPerHour, { digits: 0 })}</dd>
            </>
          )}
          <dt>{say('pace.paceLeft')}</dt>
          <dd>{saysStitches(left)}</dd>
        </dl>
        <p class="count-soft">
          {fast === undefined ? say('pace.paceFew') : say('pace.paceFrom', { count: fast.rows })}
        </p>
        {fast !== undefined && left > 0 && <p>{say('pace.paceDone', { time: saysDuration(leftMs) })}</p>}
        {fast !== undefined && left > 0 && weeklyMs >= LEAST_WEEKLY_MS && (
          <p>
            {say('pace.paceByDay', {
              day: saysDuration(weeklyMs),
              date: saysDate(Date.now() + (leftMs / weeklyMs) * WEEK_MS),
            })}
          </p>
        )}
      </Card>
      {sat.length > 0 && (
        <>
          <h2>{say('pace.sittings')}</h2>
          <SittingsPlot sittings={sat} />
          <ol class="count-list">
            {sat
              .slice(-MOST_LISTED)
              .reverse()
              .map((sitting) => (
                <li key={sitting.from}>
                  {say('pace.sittingLine', {
                    date: saysMoment(sitting.from),
                    rows: say('craft.rows', { count: sitting.rows }),
                    time: saysDuration(sitting.to - sitting.from),
                  })}
                </li>
              ))}
          </ol>
        </>
      )}
    </>
  );
}

/** Knitting in a week, ms, as in the last four; fewer weeks where she began later. */
function perWeek(sat: readonly Sitting[], now: number): number {
  const since = now - WEEKS_LOOKED_AT * WEEK_MS;
  const recent = sat.filter((sitting) => sitting.from >= since);
  const first = recent[0];
  if (first === undefined) return 0;
  const weeks = Math.max(1, Math.min(WEEKS_LOOKED_AT, (now - first.from) / WEEK_MS));
  return recent.reduce((sum, sitting) => sum + sitting.to - sitting.from, 0) / weeks;
}
