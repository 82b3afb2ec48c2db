import { useState } from 'preact/hooks';
import { logEntry } from '../../app/in-hand/count.ts';
import { standing } from '../../progress/standing.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { saysRowRidge } from '../../words/ridge.ts';
import { say } from '../../words/say.ts';
import { saysMoment } from '../../words/time.ts';
import type { CountPageProps } from './count-page.ts';

/** Notes and lifelines of the make; a note belongs to the row in hand when it was written. */
export function NotesPage({ now, entries }: CountPageProps) {
  const [text, setText] = useState('');
  const { rows } = now.place;
  const kept = standing(entries)
    .filter(({ kind }) => kind === 'note' || kind === 'lifeline')
    .reverse();
  const add = () =>
    void logEntry({ kind: 'note', text: text.trim() }).then((stored) => stored && setText(''));
  const hasLifeline = kept.some((entry) => entry.kind === 'lifeline' && entry.row === rows);
  return (
    <>
      <TextField
        label={say('count.noteHere', { row: Math.min(rows + 1, now.part.rows.length) })}
        hint={say('count.noteHint')}
        lines={3}
        maxLength={1000}
        value={text}
        onInput={setText}
      />
      <Button kind="main" wide disabled={text.trim() === ''} onPress={add}>
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
              : say('count.noteRow', { row: saysRowRidge(now.part, entry.row + 1) });
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
