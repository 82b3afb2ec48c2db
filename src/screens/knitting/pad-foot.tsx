import { computed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { finishRow, undoRow } from '../../app/intents/knit.ts';
import { tryAgain } from '../../app/intents/taps.ts';
import { settings } from '../../app/settings.ts';
import { inHand, locked, looking, rowNow, saving, tapFault, waiting } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { FinishPad } from '../../ui/pad/finish-pad.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { Locked, LookingBar } from './after-paint.ts';
import { padShapingOf } from './pad-shaping.ts';

export interface PadFootProps {
  readonly rowId: string;
  readonly onRows: () => void;
}

/** What the thumb needs. */
export function PadFoot(props: PadFootProps) {
  return (
    <>
      <SavingNotice />
      <Thumb {...props} />
    </>
  );
}

function Thumb({ rowId, onRows }: PadFootProps) {
  const beside = useMemo(() => <Beside onRows={onRows} />, []);
  if (locked.value) return <Locked />;
  if (isLooking.value) return <Looking />;
  if (atEnd.value) return <div class={`pad-row pad-${settings.value.hand} end-row`}>{beside}</div>;
  return (
    <FinishPad
      label={say('knitting.done')}
      hand={settings.value.hand}
      shaping={padShaping.value}
      pressed={isFelt.value}
      describedBy={rowId}
      beside={beside}
      onFinish={() => void finishRow()}
    />
  );
}

/** Each of these is the same from row to row for most rows: what is drawn from it stays. */
const isFelt = computed(() => saving.value === 'felt' || saving.value === 'slow');
const isLooking = computed(() => looking.value !== undefined);
const atEnd = computed(() => rowNow.value === undefined);
const atStart = computed(() => inHand.value?.place.rows === 0);
const untouched = computed(() => inHand.value?.place.seq === 0);
const padShaping = computed(() => rowNow.value && padShapingOf(rowNow.value));

function Looking() {
  const now = inHand.value;
  return now && looking.value !== undefined ? <LookingBar now={now} row={looking.value} /> : null;
}

function Beside({ onRows }: Pick<PadFootProps, 'onRows'>) {
  return (
    <>
      <IconButton icon="history" label={say('knitting.goBack')} disabled={atStart.value} onPress={onRows} />
      <IconButton
        icon="undo"
        label={say('knitting.undo')}
        disabled={untouched.value}
        onPress={() => void undoRow()}
      />
    </>
  );
}

/** The browser's storage is away: rows are kept beside it and she can knit on. */
function Held() {
  return (
    <Notice kind="warning" title={say('knitting.held')} live>
      {say('knitting.heldHelp')}
    </Notice>
  );
}

/** A tap that keeps her waiting for less than a second brings no notice. */
const trouble = computed(() => (['saving', 'felt'].includes(saving.value) ? 'saved' : saving.value));

/** Nothing while the store keeps up; what waits when it does not. */
function SavingNotice() {
  if (trouble.value === 'held') return <Held />;
  if (trouble.value === 'slow') {
    return (
      <Notice kind="warning" title={say('knitting.saving')} live>
        {say('knitting.savingHelp', { count: waiting.value })}
      </Notice>
    );
  }
  const fault = tapFault.value;
  if (trouble.value !== 'failed' || fault === undefined) return null;
  return (
    <Notice
      kind="fault"
      title={say('knitting.notSaved')}
      live
      actions={<Button onPress={() => void tryAgain()}>{say('knitting.tryAgain')}</Button>}
    >
      {saysFault(fault)} {say('knitting.savingHelp', { count: waiting.value })}
    </Notice>
  );
}
