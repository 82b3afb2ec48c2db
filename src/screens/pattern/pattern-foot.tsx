import { useState } from 'preact/hooks';
import { makeGarment } from '../../app/drafts/pattern/make-garment.ts';
import { read } from '../../app/drafts/pattern/reader.ts';
import { isToLookAt } from '../../app/drafts/pattern/to-look-at.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import type { ReadPattern } from '../../knit/pattern/read-pattern.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { loadFaults, saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';

/** How many pieces there are, what is left to look at, and the way to make the garment. */
export function PatternFoot() {
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const found = read.value;
  const pieces = found?.pieces.length ?? 0;
  const cannot = found && unmakable(found);
  const make = async () => {
    setBusy(true);
    const done = await makeGarment(say('pattern.unnamed'), (unread) =>
      [say('pattern.notMadeUp'), ...unread].join('\n'),
    );
    setBusy(false);
    if (done.ok) {
      goTo(hrefTo('garment', { garment: done.value }));
      return;
    }
    await loadFaults();
    setWrong(done.faults[0] && saysFault(done.faults[0]));
  };
  return (
    <div class="pattern-foot">
      {(wrong ?? cannot) && (
        <Notice kind="fault" live>
          {wrong ?? cannot}
        </Notice>
      )}
      {found && pieces > 0 && <Sum found={found} />}
      <Button
        kind="main"
        wide
        disabled={pieces === 0 || cannot !== undefined}
        busy={busy}
        onPress={() => void make()}
      >
        {say(busy ? 'pattern.making' : 'pattern.make')}
      </Button>
    </div>
  );
}

/** Why the garment cannot be made: the first piece that gives no plan, and the planner's reason. */
function unmakable({ pieces }: ReadPattern): string | undefined {
  for (const { plan, recipe } of pieces) {
    if (plan.ok) continue;
    const why = plan.faults[0];
    return `${say('pattern.cannot', { piece: recipe.name })}. ${why ? saysFault(why) : ''}`;
  }
  return undefined;
}

function Sum({ found }: { readonly found: ReadPattern }) {
  const toLookAt = found.lines.filter(isToLookAt).length;
  return (
    <p class="pattern-sum" role="status">
      <span>{say('pattern.pieces', { count: found.pieces.length })}</span>
      {toLookAt > 0 ? (
        <button type="button" class="pattern-goto" onClick={goToFirst}>
          {say('pattern.toLookAt', { count: toLookAt })}
        </button>
      ) : (
        <span>{say('pattern.allAgrees')}</span>
      )}
    </p>
  );
}

function goToFirst(): void {
  const line = document.querySelector<HTMLElement>('.pattern-line-wrong');
  line?.scrollIntoView({ block: 'center' });
  line?.querySelector<HTMLElement>('button, input')?.focus({ preventScroll: true });
}
