import { useState } from 'preact/hooks';
import { answerCount, changeLines, mendLine, settle } from '../../app/drafts/pattern/reader.ts';
import type { ReadLine, ReadRow } from '../../knit/pattern/read-pattern.ts';
import { Button } from '../../ui/button/button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysSide } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { saysNumber } from '../../words/numbers.ts';
import { saysRow } from '../../words/row.ts';
import { say } from '../../words/say.ts';

/** One line of the text, and beside it the rows it makes with the count after each, or what is wrong with it. */
export function LineCard({ line }: { readonly line: ReadLine }) {
  const [changing, setChanging] = useState(false);
  const wrong = line.faults.length > 0 || line.asksCount;
  return (
    <li
      class={`pattern-line pattern-line-${line.kind.replace(' ', '-')}${wrong ? ' pattern-line-wrong' : ''}`}
    >
      {changing ? (
        <ChangeLine line={line} onDone={() => setChanging(false)} />
      ) : (
        <div class="pattern-said">
          <blockquote lang="en">{line.text}</blockquote>
          <button
            type="button"
            class="pattern-change"
            aria-label={say('pattern.changeThis', { line: line.line })}
            onClick={() => setChanging(true)}
          >
            <Icon name="edit" />
          </button>
        </div>
      )}
      <Counts line={line} />
      <Rows rows={line.rows} />
      {line.lengths.map(({ open, rows }, i) => (
        <p class="quiet" key={i}>
          {open ? say('pattern.openLength') : say('pattern.length', { count: rows })}
        </p>
      ))}
      {line.faults.map((fault) => (
        <p class="pattern-fault" key={`${fault.code} ${fault.at.line} ${fault.at.column}`}>
          <Icon name="warning" size="s" />
          <span>{saysFault(fault)}</span>
        </p>
      ))}
      {line.kind === 'own words' && line.rows.length > 0 && (
        <p>{say(line.mended ? 'pattern.asYouSay' : 'pattern.ownWords')}</p>
      )}
      {isUnread(line) ? <Mend line={line} /> : line.asksCount && <AskCount line={line} />}
    </li>
  );
}

function Counts({ line: { kind, rows, before, after } }: { readonly line: ReadLine }) {
  if (kind === 'talk' && rows.length === 0) return <p class="quiet">{say('pattern.talk')}</p>;
  if (after === undefined) return null;
  if (before === undefined || rows.length === 0) {
    return <p class="pattern-counts">{say('pattern.onNeedle', { count: after })}</p>;
  }
  return (
    <p class="pattern-counts">
      <span aria-hidden="true">{say('pattern.counts', { before, after })}</span>
      <span class="spoken">{say('pattern.countsLong', { before, after })}</span>
    </p>
  );
}

/** Rows that stand open; a line that makes more opens on demand. */
const OPEN_ROWS = 2;

function Rows({ rows }: { readonly rows: readonly ReadRow[] }) {
  const [all, setAll] = useState(false);
  if (rows.length === 0) return null;
  const shown = all ? rows : rows.slice(0, OPEN_ROWS);
  return (
    <>
      <ol class="pattern-rows" role="list">
        {shown.map((row) => (
          <li key={`${row.piece} ${row.part} ${row.n}`}>
            <span class="pattern-row-n">
              {saysNumber(row.n)} {saysSide(row.side)}
            </span>
            <span class="pattern-row-work">
              {row.own === undefined ? saysRow(row.steps) : `“${row.own}”`}
            </span>
            <strong class="pattern-row-count">{saysNumber(row.after)}</strong>
          </li>
        ))}
      </ol>
      {rows.length > OPEN_ROWS && !all && (
        <Button kind="quiet" onPress={() => setAll(true)}>
          {say('pattern.showAll', { count: rows.length })}
        </Button>
      )}
    </>
  );
}

function ChangeLine({ line, onDone }: { readonly line: ReadLine; readonly onDone: () => void }) {
  const [text, setText] = useState(line.text);
  const done = () => {
    if (text !== line.text) changeLines(line.line, line.lastLine, text);
    void settle();
    onDone();
  };
  return (
    <div class="pattern-changing">
      <TextField label={say('pattern.line', { line: line.line })} lines={3} value={text} onInput={setText} />
      <Button kind="main" onPress={done}>
        {say('pattern.done')}
      </Button>
    </div>
  );
}

/** A line that she can mend by saying what it is; a count that contradicts is mended in the text. */
const isUnread = ({ faults, kind, mended, rows }: ReadLine): boolean =>
  mended || (faults.length > 0 && (kind === 'own words' || rows.some(({ own }) => own !== undefined)));

/** It makes no rows, or so many: two taps instead of other words. */
function Mend({ line }: { readonly line: ReadLine }) {
  const own = line.rows.filter(({ own: words }) => words !== undefined);
  const [rows, setRows] = useState<number | undefined>(Math.max(1, own.length));
  const [stitches, setStitches] = useState<number | undefined>(line.after);
  const whole = (n: number | undefined): n is number => n !== undefined && Number.isSafeInteger(n) && n >= 0;
  const answered = whole(rows) && rows > 0 && whole(stitches);
  return (
    <div class="pattern-ask">
      <NumberField label={say('pattern.rowsOfIt')} min={1} value={rows} onChange={setRows} />
      <NumberField label={say('pattern.askCount')} min={0} value={stitches} onChange={setStitches} />
      <Button disabled={!answered} onPress={() => answered && mendLine(line.lastLine, { rows, stitches })}>
        {say('pattern.isRows')}
      </Button>
      <Button kind="quiet" onPress={() => mendLine(line.lastLine, { rows: 0 })}>
        {say('pattern.noRows')}
      </Button>
    </div>
  );
}

function AskCount({ line }: { readonly line: ReadLine }) {
  const [count, setCount] = useState<number | undefined>(line.after);
  const answered = count !== undefined && Number.isSafeInteger(count) && count >= 0;
  return (
    <div class="pattern-ask">
      <NumberField label={say('pattern.askCount')} min={0} value={count} onChange={setCount} />
      <Button disabled={!answered} onPress={() => answered && answerCount(line.lastLine, count)}>
        {say('pattern.writeCount')}
      </Button>
    </div>
  );
}
