import { useEffect, useRef } from 'preact/hooks';
import { notesInHand } from '../../app/in-hand/before-row.ts';
import { notesOf } from '../../app/in-hand/row-notes.ts';
import type { InHand } from '../../app/state.ts';

/** Fetches her notes on the part in hand, of this make and the other ones, and the lifelines in it; shows nothing. */
export function ReadNotes({ now }: { readonly now: InHand }): null {
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
    void notesOf(now.place).then((notes) => {
      if (mine === asked.current)
        notesInHand.value = notes.length > 0 ? { make: now.make, notes } : undefined;
    });
  }, [id, seq]);
  return null;
}
