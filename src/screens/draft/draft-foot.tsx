import { useState } from 'preact/hooks';
import { drafted, kept } from '../../app/drafts/design/designer.ts';
import { makeGarment } from '../../app/drafts/design/make-garment.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { loadFaults, saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { goToField } from './go-to-field.ts';
import { saysName } from './says-name.ts';
import { SmallSchematic } from './schematic.tsx';
import { faults, openCautions } from './troubles.ts';

/** The garment small, as it is now, and the way to make it. */
export function DraftFoot() {
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const made = drafted.value;
  const toMend = faults.value.length;
  const toSee = openCautions.value.length;
  const make = async () => {
    setBusy(true);
    const done = await makeGarment(say('draft.unnamed'), saysName);
    setBusy(false);
    if (done.ok) {
      goTo(hrefTo('garment', { garment: done.value }));
      return;
    }
    await loadFaults();
    setWrong(done.faults[0] && saysFault(done.faults[0]));
  };
  const says =
    toMend > 0
      ? say('draft.toMend', { count: toMend })
      : toSee > 0
        ? say('draft.openCautions', { count: toSee })
        : '';
  return (
    <div class="draft-foot">
      {wrong && (
        <Notice kind="fault" live>
          {wrong}
        </Notice>
      )}
      <div class="draft-foot-row">
        {made?.ok ? (
          <SmallSchematic draft={made.value} />
        ) : (
          <p class="draft-small">{say('draft.cannotMake')}</p>
        )}
        <div class="draft-foot-do">
          {says !== '' && (
            <button type="button" class="draft-goto" onClick={goToTrouble}>
              {says}
            </button>
          )}
          <Button kind="main" wide disabled={!made?.ok} busy={busy} onPress={() => void make()}>
            {say(busy ? 'draft.making' : 'draft.makeIt')}
          </Button>
        </div>
      </div>
      {kept.value === 'failed' && <p role="status">{say('draft.notKept')}</p>}
    </div>
  );
}

const goToTrouble = (): void => goToField((faults.value[0] ?? openCautions.value[0])?.at.field);
