import { useState } from 'preact/hooks';
import { logEntry } from '../../app/in-hand/count.ts';
import { rowOfNote } from '../../progress/log.ts';
import { standing } from '../../progress/standing.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { saysRowRidge } from '../../words/ridge.ts';
import { say } from '../../words/say.ts';
import { saysMoment } from '../../words/time.ts';
import type { CountPageProps } from './count-page.ts';

/** Notes and lifelines of the make; a note belongs to the row in hand when it was written, or to one ahead. */
export function NotesPage({ now, entries }: CountPageProps) {
  const [text, setText] = useState('');
  const { rows } = now.place;
  const total = now.part.rows.length;
  const inHand = Math.min(rows + 1, total);
  const [wanted, setWanted] = useState<number | undefined>(inHand);
  const row = Math.min(total, Math.max(1, wanted ?? inHand));
  const kept = standing(entries)
    .filter(({ kind }) => kind === 'note' || kind === 'lifeline')
    .reverse();
  const add = async () => {
    const ahead = row === inHand ? {} : { beforeRow: row };
    if (!(await logEntry({ kind: 'note', text: text.trim(), ...ahead }))) return;
    setText('');
    setWanted(inHand);
  };
  const hasLifeline = kept.some((entry) => entry.kind === 'lifeline' && entry.row === rows);
  return (
    <>
      <TextField
        label={say('count.noteHere', { row: saysRowRidge(now.part, row) })}
        hint={say('count.noteHint')}
        lines={3}
        maxLength={1000}
        value={text}
        onInput={setText}
      />
      <NumberField label={say('count.noteBefore')} min={1} max={total} value={wanted} onChange={setWanted} />
      <Button kind="main" wide disabled={text.trim() === ''} onPress={() => void add()}>
        {say('count.addNote')}
      </Button>
      {rows > 0 && !hasLifeline && (
        <Button icon="lifeline" wide onPress={() => void logEntry({ kind: 'lifeline' })}>
          {say('count.addLifeline', { row: saysRowRidge(now.part, rows) })}
        </Button>
      )}
      {kept.length === 0 && <p class="count-soft">{say('count.noNotes')}</p>}
      <ul class="count-list">
        {kept.map((entry) => {
          const title =
            entry.kind === 'lifeline'
              ? say('count.lifelineRow', { row: saysRowRidge(now.part, entry.row) })
              : say('count.noteRow', { row: saysRowRidge(now.part, rowOfNote(entry)) });
          return (
            <li key={entry.id} class="card count-row">
              <div>
                <strong>{title}</strong> <span class="count-soft">{saysMoment(entry.at)}</span>
                {entry.text && <p class="count-text">{entry.text}</p>}
              </div>
              <IconButton
                icon="trash"
                label={say('count.strike', { what: title })}
                onPress={() => void logEntry({ kind: 'strike', undoes: entry.id })}
              />
            </li>
          );
        })}
      </ul>
    </>
  );
}
