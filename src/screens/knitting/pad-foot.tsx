import { computed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { finishRow, undoRow } from '../../app/in-hand/knit.ts';
import { atEnd, atStart, isLooking, toWork } from '../../app/in-hand/reading.ts';
import { settings } from '../../app/settings/settings.ts';
import { inHand, isFelt, locked, looking } from '../../app/state.ts';
import { useLate } from '../../pace/late.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { FinishPad } from '../../ui/pad/finish-pad.tsx';
import { say } from '../../words/say.ts';
import { Locked, LookingBar, SavingNotice } from './after-paint.ts';
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
  // the row first, then the pad: a frame that changes both takes too long on a slow phone
  const shaping = useLate(padShaping, 'pad', true);
  if (locked.value) return <Locked />;
  if (isLooking.value) return <Looking />;
  if (atEnd.value) return <div class={`pad-row pad-${settings.value.hand} end-row`}>{beside}</div>;
  return (
    <FinishPad
      label={say('knitting.done')}
      hand={settings.value.hand}
      shaping={shaping}
      pressed={isFelt.value}
      describedBy={`${rowId}w ${rowId}c`}
      beside={beside}
      onFinish={() => void finishRow()}
    />
  );
}

/** Each of these is the same from row to row for most rows: what is drawn from it stays. */
const untouched = computed(() => inHand.value?.place.seq === 0);
const padShaping = computed(() => toWork.value && padShapingOf(toWork.value.row));

function Looking() {
  const now = inHand.value;
  return now && looking.value !== undefined ? <LookingBar now={now} row={looking.value} /> : null;
}

function Beside({ onRows }: Pick<PadFootProps, 'onRows'>) {
  return (
    <>
      <IconButton icon="rows" label={say('knitting.goBack')} disabled={atStart.value} onPress={onRows} />
      <IconButton
        icon="undo"
        label={say('knitting.undo')}
        disabled={untouched.value}
        onPress={() => void undoRow()}
      />
    </>
  );
}
