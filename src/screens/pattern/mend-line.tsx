import { useState } from 'preact/hooks';
import { mendSentence, readingsOf, takeReading } from '../../app/drafts/pattern/reader.ts';
import type { Unread } from '../../knit/pattern/follow/build/notes.ts';
import type { ReadLine } from '../../knit/pattern/read-pattern.ts';
import type { Reading } from '../../knit/pattern/readings.ts';
import { Button } from '../../ui/button/button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { say } from '../../words/say.ts';
import { Counts, Rows } from './read-rows.tsx';

interface Sentence {
  readonly line: ReadLine;
  readonly one: Unread;
}

/** It makes no rows, or so many: two taps instead of other words. */
export function Mend({ line, one }: Sentence) {
  const [rows, setRows] = useState<number | undefined>(Math.max(1, one.rows));
  const [stitches, setStitches] = useState<number | undefined>(one.after);
  const whole = (n: number | undefined): n is number => n !== undefined && Number.isSafeInteger(n) && n >= 0;
  const answered = whole(rows) && rows > 0 && whole(stitches);
  return (
    <div class="pattern-ask">
      {line.unread.length > 1 && <blockquote lang="en">{one.words}</blockquote>}
      <NumberField label={say('pattern.rowsOfIt')} min={1} value={rows} onChange={setRows} />
      <NumberField label={say('pattern.askCount')} min={0} value={stitches} onChange={setStitches} />
      <Button disabled={!answered} onPress={() => answered && mendSentence(line, one, { rows, stitches })}>
        {say('pattern.isRows')}
      </Button>
      <Button kind="quiet" onPress={() => mendSentence(line, one, { rows: 0 })}>
        {say('pattern.noRows')}
      </Button>
      {!line.mended && <ReadAs line={line} one={one} />}
    </div>
  );
}

/** The nearest readings, looked for when she asks: the rows of each beside its counts, and what of her words it leaves out. */
function ReadAs({ line, one }: Sentence) {
  const [found, setFound] = useState<readonly Reading[] | 'looking' | undefined>(undefined);
  const look = async () => {
    setFound('looking');
    setFound((await readingsOf(line, one)) ?? []);
  };
  if (!Array.isArray(found))
    return (
      <Button kind="quiet" busy={found === 'looking'} onPress={() => void look()}>
        {say('pattern.readAs')}
      </Button>
    );
  if (found.length === 0) return <p role="status">{say('pattern.noReading')}</p>;
  return (
    <ul class="pattern-readings" role="list" aria-label={say('pattern.readings')}>
      {found.map((reading: Reading) => (
        <li key={reading.text}>
          <blockquote lang="en">{reading.text}</blockquote>
          {reading.without !== '' && (
            <p class="quiet">{say('pattern.without', { words: reading.without })}</p>
          )}
          <Counts
            kind="instructions"
            rows={reading.rows}
            before={reading.before ?? 0}
            after={reading.after}
          />
          <Rows rows={reading.rows} />
          <Button onPress={() => takeReading(line, one, reading)}>{say('pattern.readSo')}</Button>
        </li>
      ))}
    </ul>
  );
}
