import { useState } from 'preact/hooks';
import { answerCount, changeLines, settle } from '../../app/drafts/pattern/reader.ts';
import { isToLookAt } from '../../app/drafts/pattern/to-look-at.ts';
import type { ReadLine } from '../../knit/pattern/read-pattern.ts';
import { Button } from '../../ui/button/button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { Mend } from './mend-line.tsx';
import { Counts, Rows } from './read-rows.tsx';

/** One line of the text, and beside it the rows it makes with the count after each, or what is wrong with it. */
export function LineCard({ line }: { readonly line: ReadLine }) {
  const [changing, setChanging] = useState(false);
  const wrong = isToLookAt(line);
  return (
    <li
      class={`pattern-line pattern-line-${line.kind.replace(' ', '-')}${wrong ? ' pattern-line-wrong' : ''}`}
    >
      {changing ? (
        <ChangeLine line={line} onDone={() => setChanging(false)} />
      ) : (
        <div class="pattern-said">
          <blockquote lang="en" dir="auto">
            {line.text}
          </blockquote>
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
      <Counts {...line} />
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
      {line.countedBy && (
        <p class="quiet">
          {say('pattern.countedBy', { count: line.countedBy.stitches, line: line.countedBy.line })}
        </p>
      )}
      {line.follows !== undefined && <p>{say('pattern.follows', { line: line.follows })}</p>}
      {line.unread.map((one) => (
        <Mend key={`${one.line} ${one.column}`} line={line} one={one} />
      ))}
      {line.unread.length === 0 && line.asksCount && <AskCount line={line} />}
    </li>
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
