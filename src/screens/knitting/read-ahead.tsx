import { reading, toWork } from '../../app/in-hand/reading.ts';
import { isFelt } from '../../app/state.ts';
import { say } from '../../words/say.ts';

/** Which row the words are of while the row before it is not on disk yet; nothing where the disk keeps up. */
export function ReadAhead() {
  // asked first: while the disk keeps up it hears of no row
  if (!isFelt.value) return null;
  const row = toWork.value?.row.n;
  const from = reading.value?.row.n;
  if (row === undefined || from === undefined || row === from) return null;
  const to = row - 1;
  return (
    <p class="read-ahead">
      {from === to ? say('notices.readAhead', { row, from }) : say('notices.readFarAhead', { row, from, to })}
    </p>
  );
}
