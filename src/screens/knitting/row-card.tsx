import { useMemo } from 'preact/hooks';
import { workedInHand } from '../../app/reading.ts';
import { isShaping, ownWordsOf } from '../../app/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { saysShaping, saysSide } from '../../words/craft.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { RowColour, SmallMap } from './after-paint.ts';
import { Late } from './late.tsx';
import { notchOf } from './pad-shaping.ts';

export interface RowCardProps {
  readonly part: PlannedPart;
  readonly row: PlannedRow;
  /** id for what describes the pad */
  readonly id: string;
  readonly onMap: () => void;
  readonly onLegend: () => void;
}

/** One row, to be read at arm's length: side and needle, what to work, how many stitches after it. */
export function RowCard({ part, row, id, onMap, onLegend }: RowCardProps) {
  const shapes = isShaping(row);
  const label = say('knitting.legend');
  const legend = useMemo(() => <IconButton icon="note" label={label} onPress={onLegend} />, [label]);
  const map = useMemo(() => <PlaceInPart part={part} onMap={onMap} />, [part]);
  return (
    <section class={`row-card${shapes ? ' row-card-shaping' : ''}`} id={id} aria-label={saysRowOf(part, row)}>
      <p class="row-facts">
        <strong class={`row-side row-side-${row.side}`}>
          <abbr title={saysSide(row.side, true)}>{saysSide(row.side)}</abbr>
        </strong>
        <span class="row-needle">
          {say('knitting.needle', { size: saysNeedle(row.needle) })}
          <RowColour row={row.n} />
        </span>
        {legend}
      </p>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the button above does the same for keys and readers */}
      <p class="row-work" onClick={onLegend}>
        {ownWordsOf(part, row) ?? saysRow(row.steps)}
      </p>
      {shapes && <p class={`row-shaping row-shaping-${notchOf(row)}`}>{saysShaping(row)}</p>}
      <div class="row-after">
        <p>
          <strong class="row-count">{saysNumber(row.after)}</strong>
          <span class="row-count-word">
            {say(row.after === 1 ? 'knitting.afterRowOne' : 'knitting.afterRow')}
          </span>
        </p>
        {map}
      </div>
    </section>
  );
}

/** It has its own time, and is not gone through with the row's words. */
const PlaceInPart = ({ part, onMap }: Pick<RowCardProps, 'part' | 'onMap'>) => (
  <div class="small-map-place">
    <Late of={workedInHand} turn={5}>
      {(rows) => <SmallMap part={part} worked={rows} onMap={onMap} />}
    </Late>
  </div>
);

const saysRowOf = (part: PlannedPart, row: PlannedRow): string =>
  say('knitting.rowOf', { row: row.n, rows: part.rows.length });
