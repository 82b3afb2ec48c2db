import { applyUpdate, updatedElsewhere, updateReady } from '../../app/start/service-worker.ts';
import { saving } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';

/** Offered here and not on the knitting screen: never in the middle of a row, never while a row is being stored. */
export function UpdateNotice() {
  const elsewhere = updatedElsewhere.value;
  if (!updateReady.value && !elsewhere) return null;
  const actions = (
    <Button disabled={saving.value !== 'saved'} onPress={applyUpdate}>
      {elsewhere ? say('workbasket.reload') : say('workbasket.updateNow')}
    </Button>
  );
  return (
    <Notice kind="note" title={elsewhere ? undefined : say('workbasket.update')} actions={actions} live>
      {elsewhere ? say('workbasket.updatedElsewhere') : say('workbasket.updateHelp')}
    </Notice>
  );
}
