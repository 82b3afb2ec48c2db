import './ladder.css';
import { useMemo } from 'preact/hooks';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysNumber } from '../../words/numbers.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { Icon, type IconName } from '../icon/icon.tsx';
import { ShapingIcons } from '../icon/shaping-icons.tsx';
import type { Rung } from './rows-ahead.ts';

/** Something done before a row, in a word or two. */
export interface RungMark {
  readonly icon: IconName;
  readonly text: string;
}

export interface LadderProps {
  /** from `rowsAhead` */
  readonly rungs: readonly Rung[];
  /** what is done before a row */
  readonly marksOf?: ((row: PlannedRow) => readonly RungMark[]) | undefined;
  /** a rung was tapped, to be read */
  readonly onRead?: ((row: number) => void) | undefined;
}

/** The rows ahead, the next one first. Needs the catalogues 'ui', 'craft' and 'row'. */
export function Ladder({ rungs, marksOf, onRead }: LadderProps) {
  return (
    <ol class="ladder" aria-label={say('ui.nextRows')}>
      {rungs.map((rung) =>
        'row' in rung ? (
          <li key={rung.row.n} class={`rung${rung.row.shaping.length > 0 ? ' rung-shaping' : ''}`}>
            <Marks marks={marksOf?.(rung.row) ?? []} />
            {onRead ? (
              <button class="rung-inside" type="button" onClick={() => onRead(rung.row.n)}>
                <RungWords row={rung.row} />
              </button>
            ) : (
              <div class="rung-inside">
                <RungWords row={rung.row} />
              </div>
            )}
          </li>
        ) : (
          <li key={`passed ${rung.from}`} class="rung-passed">
            {say('ui.rowsBetween', { count: rung.plainRows })}
          </li>
        ),
      )}
    </ol>
  );
}

/** Before the row: above its words. */
function Marks({ marks }: { readonly marks: readonly RungMark[] }) {
  if (marks.length === 0) return null;
  return (
    <ul class="rung-marks" role="list">
      {marks.map(({ icon, text }) => (
        <li key={text}>
          <Icon name={icon} size="s" />
          {text}
        </li>
      ))}
    </ul>
  );
}

/** Of four rungs three stay with each row: they are not gone through again. */
function RungWords({ row }: { readonly row: PlannedRow }) {
  return useMemo(() => wordsOf(row), [row, speech.value]);
}

function wordsOf(row: PlannedRow) {
  const shaping = saysShaping(row);
  return (
    <>
      <span class="rung-number">{saysNumber(row.n)}</span>
      <span class="rung-side">{saysSide(row.side)}</span>
      <span class="rung-row">
        {heldTogether(saysRow(row.steps))}
        {shaping && (
          <strong class="rung-word">
            <ShapingIcons row={row} />
            {shaping}
          </strong>
        )}
      </span>
      <span class="rung-after" aria-hidden="true">
        {saysNumber(row.after)}
      </span>
      <span class="spoken">{saysStitches(row.after)}</span>
    </>
  );
}
