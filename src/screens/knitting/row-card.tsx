import { useMemo } from 'preact/hooks';
import { workedInHand } from '../../app/in-hand/reading.ts';
import { isShaping, ownWordsOf } from '../../app/in-hand/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { Late } from '../../pace/late.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { saysShaping, saysSide } from '../../words/craft.ts';
import { saysNeedle } from '../../words/needle.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { RowColour, SmallMap } from './after-paint.ts';
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
  const work = ownWordsOf(part, row) ?? saysRow(row.steps);
  const label = say('knitting.legend');
  const legend = useMemo(() => <IconButton icon="note" label={label} onPress={onLegend} />, [label]);
  const map = useMemo(() => <PlaceInPart part={part} onMap={onMap} />, [part]);
  return (
    <section
      class={`row-card row-card-${shapes ? notchOf(row) : 'plain'}`}
      id={id}
      aria-label={saysRowOf(part, row)}
    >
      <div class="row-facts">
        <strong class={`row-side row-side-${row.side}`}>
          <abbr title={saysSide(row.side, true)}>{saysSide(row.side)}</abbr>
        </strong>
        {shapes && <strong class="row-shaping">{saysShaping(row)}</strong>}
        <span class="row-needle">{say('knitting.needle', { size: saysNeedle(row.needle) })}</span>
        <RowColour part={part} row={row.n} />
        {legend}
      </div>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the button above does the same for keys and readers */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the same */}
      <div class={`row-work row-work-${lengthOf(work)}`} onClick={onLegend}>
        {work}
      </div>
      <div class="row-after">
        <div class="row-counted">
          <strong class="row-count">{saysNumber(row.after)}</strong>
          <span class="row-count-word">
            {say(row.after === 1 ? 'knitting.afterRowOne' : 'knitting.afterRow')}
          </span>
        </div>
        {map}
      </div>
    </section>
  );
}

/** What is said in a word or two is read from further away than what takes four lines. (Letters counted.) */
const lengthOf = (work: string): 'short' | 'medium' | 'long' =>
  work.length <= 12 ? 'short' : work.length <= 44 ? 'medium' : 'long';

/** It has its own time, and is not gone through with the row's words. */
const PlaceInPart = ({ part, onMap }: Pick<RowCardProps, 'part' | 'onMap'>) => (
  <div class="small-map-place">
    <Late of={workedInHand} turn="small map">
      {(rows) => <SmallMap part={part} worked={rows} onMap={onMap} />}
    </Late>
  </div>
);

const saysRowOf = (part: PlannedPart, row: PlannedRow): string =>
  say('knitting.rowOf', { row: row.n, rows: part.rows.length });
