import './ladder.css';
import { useMemo } from 'preact/hooks';
import type { PlannedRow } from '../../knit/piece/planned.ts';
import { saysShaping, saysSide, saysStitches } from '../../words/craft.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { Icon } from '../icon/icon.tsx';
import type { Rung } from './rows-ahead.ts';

export interface LadderProps {
  /** from `rowsAhead` */
  readonly rungs: readonly Rung[];
  /** the colour of a row, where rows have one */
  readonly colour?: ((row: number) => string | undefined) | undefined;
  /** a rung was tapped, to be read */
  readonly onRead?: ((row: number) => void) | undefined;
}

/** The rows ahead, the next one first. Needs the catalogues 'ui', 'craft' and 'row'. */
export function Ladder({ rungs, colour, onRead }: LadderProps) {
  return (
    <ol class="ladder" aria-label={say('ui.nextRows')}>
      {rungs.map((rung) =>
        'row' in rung ? (
          <li key={rung.row.n} class={`rung${rung.row.shaping.length > 0 ? ' rung-shaping' : ''}`}>
            {onRead ? (
              <button class="rung-inside" type="button" onClick={() => onRead(rung.row.n)}>
                <RungWords row={rung.row} colour={newColour(colour, rung.row)} />
              </button>
            ) : (
              <div class="rung-inside">
                <RungWords row={rung.row} colour={newColour(colour, rung.row)} />
              </div>
            )}
          </li>
        ) : (
          <li key="passed" class="rung-passed">
            {say('ui.rowsBetween', { count: rung.plainRows })}
          </li>
        ),
      )}
    </ol>
  );
}

/** Of four rungs three stay with each row: they are not gone through again. */
function RungWords({ row, colour }: { readonly row: PlannedRow; readonly colour: string | undefined }) {
  return useMemo(() => wordsOf(row, colour), [row, colour, speech.value]);
}

/** Only where a stripe begins. */
const newColour = (colour: LadderProps['colour'], { n }: PlannedRow): string | undefined =>
  colour?.(n) === colour?.(n - 1) ? undefined : colour?.(n);

function wordsOf(row: PlannedRow, colour: string | undefined) {
  const shaping = saysShaping(row);
  return (
    <>
      <span class="rung-number">{saysNumber(row.n)}</span>
      <span class="rung-side">{saysSide(row.side)}</span>
      <span class="rung-row">
        {colour !== undefined && <b>{colour}: </b>}
        {saysRow(row.steps)}
        {shaping && (
          <strong class="rung-word">
            <Icon name="notch" size="s" />
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
