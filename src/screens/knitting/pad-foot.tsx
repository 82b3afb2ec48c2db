import { finishRow, undoRow } from '../../app/intents/knit.ts';
import { tryAgain } from '../../app/intents/taps.ts';
import { settings } from '../../app/settings.ts';
import { type InHand, locked, looking, rowNow, saving, tapFault, waiting } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { FinishPad } from '../../ui/pad/finish-pad.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { Locked, LookingBar } from './after-paint.ts';
import { padShapingOf } from './pad-shaping.ts';

export interface PadFootProps {
  readonly now: InHand;
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

function Thumb({ now, rowId, onRows }: PadFootProps) {
  const row = rowNow.value;
  if (locked.value) return <Locked />;
  if (looking.value !== undefined) return <LookingBar now={now} row={looking.value} />;
  const beside = (
    <>
      <IconButton
        icon="history"
        label={say('knitting.goBack')}
        disabled={now.place.rows === 0}
        onPress={onRows}
      />
      <IconButton
        icon="undo"
        label={say('knitting.undo')}
        disabled={now.place.seq === 0}
        onPress={() => void undoRow()}
      />
    </>
  );
  if (row === undefined) return <div class={`pad-row pad-${settings.value.hand} end-row`}>{beside}</div>;
  return (
    <FinishPad
      label={say('knitting.done')}
      hand={settings.value.hand}
      shaping={padShapingOf(row)}
      describedBy={rowId}
      beside={beside}
      onFinish={() => void finishRow()}
    />
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

/** Nothing while the store keeps up; what waits when it does not. */
function SavingNotice() {
  if (saving.value === 'held') return <Held />;
  if (saving.value === 'slow') {
    return (
      <Notice kind="warning" title={say('knitting.saving')} live>
        {say('knitting.savingHelp', { count: waiting.value })}
      </Notice>
    );
  }
  const fault = tapFault.value;
  if (saving.value !== 'failed' || fault === undefined) return null;
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
