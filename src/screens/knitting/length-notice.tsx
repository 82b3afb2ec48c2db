import { useState } from 'preact/hooks';
import { endHere, lengthen, stretchNow } from '../../app/in-hand/stretch-in-hand.ts';
import { canEndHere, type StretchInHand } from '../../knit/pattern/stretch-at.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysLength } from '../../words/measures.ts';
import { loadWords, say } from '../../words/say.ts';

/** So many rows before its planned end she is asked to measure; an open stretch asks all along. */
const NEAR_ROWS = 6;

/** A stretch that the pattern gives as a length: she measures, and says that it is long enough or knits on. */
export function LengthNotice() {
  const stretch = stretchNow.value;
  const [wrong, setWrong] = useState<string>();
  const [busy, setBusy] = useState(false);
  if (stretch === undefined || !(stretch.open || stretch.left <= NEAR_ROWS)) return null;
  const doing = (act: typeof lengthen) => async () => {
    setBusy(true);
    const done = await act();
    setBusy(false);
    if (!done.ok) await loadWords('patternFaults');
    setWrong(done.ok || !done.faults[0] ? undefined : saysFault(done.faults[0]));
  };
  const title =
    stretch.mm === undefined
      ? say('length.titleOpen')
      : say('length.title', { length: saysLength(stretch.mm) });
  const actions = (
    <>
      {stretch.left > 0 && (
        <Button disabled={busy || !canEndHere(stretch)} onPress={() => void doing(endHere)()}>
          {say('length.longEnough')}
        </Button>
      )}
      <Button disabled={busy} onPress={() => void doing(lengthen)()}>
        {say('length.twoMore')}
      </Button>
    </>
  );
  return (
    <Notice kind="note" title={title} actions={actions}>
      <p>{say('length.from', { where: whereOf(stretch), count: stretch.left })}</p>
      {stretch.worked > 0 && stretch.left > 0 && !canEndHere(stretch) && <p>{say('length.oneFirst')}</p>}
      {wrong && <p role="alert">{wrong}</p>}
    </Notice>
  );
}

const whereOf = ({ from }: StretchInHand): string => {
  if (from === 'start' || from === 'here' || from === 'armhole' || from === 'rib')
    return say(`length.${from}`);
  return say('length.elsewhere');
};
