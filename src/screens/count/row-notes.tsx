import { useEffect, useRef, useState } from 'preact/hooks';
import { type NoteOnRow, notesOf } from '../../app/in-hand/row-notes.ts';
import type { InHand } from '../../app/state.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { loadWords, say } from '../../words/say.ts';

/** Her notes on the row in hand, from this make and the other ones, and the lifeline below it. */
export function RowNotes({ now, row }: { readonly now: InHand; readonly row: number }) {
  const [notes, setNotes] = useState<readonly NoteOnRow[]>([]);
  const { id, seq, rows } = now.place;
  const read = useRef('');
  const asked = useRef(0);
  useEffect(() => {
    // Notes are written on a page of their own. A row finished changes none of them, and the log may be long.
    const isNextRow = read.current === `${id} ${rows - 1}`;
    read.current = `${id} ${rows}`;
    if (isNextRow) return;
    // the next tap may come before the answer: only a later question makes it void
    asked.current += 1;
    const mine = asked.current;
    void Promise.all([notesOf(now.place), loadWords('count')]).then(([found]) => {
      if (mine === asked.current) setNotes(found);
    });
  }, [id, seq]);
  const here = notes.filter((note) => note.row === row);
  if (here.length === 0) return null;
  return (
    <Notice kind="note" live>
      {here.map(({ entry, kind, text, make }) => (
        <p key={entry}>
          {make === now.place.make ? '' : `${say('count.fromMake', { make })}: `}
          {kind === 'lifeline' ? say('count.lifelineRow', { row: row - 1 }) : text}
        </p>
      ))}
    </Notice>
  );
}
