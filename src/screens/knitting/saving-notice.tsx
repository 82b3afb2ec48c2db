import { computed } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { forgetRefused } from '../../app/in-hand/refused.ts';
import { tryAgain } from '../../app/in-hand/taps.ts';
import { saving, tapFault, waiting } from '../../app/state.ts';
import type { Fault, FaultCode } from '../../knit/fault.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';

/** Why it does not take them, in as few words as leave the row in sight. */
const whyHeld: Partial<Record<FaultCode, 'notices.heldFull' | 'notices.heldOld'>> = {
  'storage-full': 'notices.heldFull',
  'database-newer': 'notices.heldOld',
  'database-blocked': 'notices.heldOld',
};

/** The browser's storage takes nothing: rows are kept beside it and she can knit on. */
function Held() {
  const why = tapFault.value && whyHeld[tapFault.value.code];
  return (
    <Notice kind="warning" title={say('notices.held')} live>
      {say(why ?? 'notices.heldHelp')}
    </Notice>
  );
}

/** Another window was there first: what she tapped is not written, and the screen shows what is. */
function Refused({ fault }: { readonly fault: Fault }) {
  useEffect(() => forgetRefused, []);
  return (
    <Notice kind="warning" title={say('notices.checkRow')} live>
      {saysFault(fault)}
    </Notice>
  );
}

/** A tap that keeps her waiting for less than a second brings no notice. */
const trouble = computed(() => (['saving', 'felt'].includes(saving.value) ? 'saved' : saving.value));

/** Nothing while the store keeps up; what waits when it does not. */
export function SavingNotice() {
  const told = noticeOf(trouble.value);
  return (
    told && (
      <>
        <Shows what="foot-notice" />
        {told}
      </>
    )
  );
}

function noticeOf(what: typeof trouble.value) {
  if (what === 'held') return <Held />;
  if (what === 'slow') {
    return (
      <Notice kind="warning" title={say('notices.saving')} live>
        {say('notices.savingHelp', { count: waiting.value })}
      </Notice>
    );
  }
  const fault = tapFault.value;
  if (fault === undefined) return null;
  if (what !== 'failed') return <Refused fault={fault} />;
  return (
    <Notice
      kind="fault"
      title={say('notices.notSaved')}
      live
      actions={<Button onPress={() => void tryAgain()}>{say('notices.tryAgain')}</Button>}
    >
      {saysFault(fault)} {say('notices.onlyHere', { count: waiting.value })}
    </Notice>
  );
}
