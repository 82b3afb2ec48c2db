import { useMemo } from 'preact/hooks';
import { isShaping, ownWordsOf } from '../../app/in-hand/row-now.ts';
import type { PlannedPart, PlannedRow } from '../../knit/piece/planned.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { saysShaping, saysSide } from '../../words/craft.ts';
import { saysNumber } from '../../words/numbers.ts';
import { heldTogether, saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';
import { RowFacts } from './after-paint.ts';
import { notchOf } from './pad-shaping.ts';

export interface RowCardProps {
  readonly part: PlannedPart;
  readonly row: PlannedRow;
  /** what describes the pad has ids that begin with it: words `…w`, count `…c` */
  readonly id: string;
  readonly onLegend: () => void;
}

/** One row, to be read at arm's length: side and shaping, what to work, how many stitches after it. */
export function RowCard({ part, row, id, onLegend }: RowCardProps) {
  const shapes = isShaping(row);
  const work = heldTogether(ownWordsOf(part, row) ?? saysRow(row.steps));
  const label = say('knitting.legend');
  const legend = useMemo(() => <IconButton icon="info" label={label} onPress={onLegend} />, [label]);
  // what is done in one go stands on one line: a row is broken after its commas
  const chunks = work.split(/(?<=[,;]) /);
  const change = row.after - row.before;
  return (
    <section class={`row-card row-card-${shapes ? notchOf(row) : 'plain'}`} aria-label={saysRowOf(part, row)}>
      <div class="row-facts">
        <strong class={`row-side row-side-${row.side}`}>
          <abbr title={saysSide(row.side, true)}>{saysSide(row.side)}</abbr>
        </strong>
        {shapes && <strong class="row-shaping">{saysShaping(row)}</strong>}
        <RowFacts part={part} row={row.n} />
        {legend}
      </div>
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the button above does the same for keys and readers */}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the same */}
      <div
        class={`row-work row-work-${lengthOf(work)}`}
        id={`${id}w`}
        // her own language's order, also where the page runs from right to left
        dir="auto"
        style={{ '--letters': longest(chunks), '--longest': longest(work.split(' ')) }}
        onClick={onLegend}
      >
        {chunks.flatMap(onOneLine)}
      </div>
      <div class="row-after" id={`${id}c`}>
        <strong class="row-count">{saysNumber(row.after)}</strong>
        <span class="row-count-words">
          <span class="row-count-word">{say('knitting.afterRow', { count: row.after })}</span>
          {shapes && change !== 0 && (
            <strong class="row-change">
              {say(change < 0 ? 'knitting.fewer' : 'knitting.moreThan', { count: Math.abs(change) })}
            </strong>
          )}
        </span>
      </div>
    </section>
  );
}

/** Letters of the longest stretch, or of the longest word. */
const longest = (all: readonly string[]) => Math.max(...all.map((one) => one.length));

/** What is said in a word or two is read from further away than what takes four lines. (Letters counted.) */
const lengthOf = (work: string): 'short' | 'medium' | 'long' =>
  work.length <= 12 ? 'short' : work.length <= 44 ? 'medium' : 'long';

/** A stretch that is too long for a line is broken as any other text. */
const onOneLine = (chunk: string) => [
  chunk.length > MOST_LETTERS ? chunk : <span class="row-chunk">{chunk}</span>,
  ' ',
];

/** A whole sentence is no smaller for being one. */
const MOST_LETTERS = 24;

export const saysRowOf = (part: PlannedPart, row: PlannedRow): string =>
  say('knitting.rowOf', { row: row.n, rows: part.rows.length });
