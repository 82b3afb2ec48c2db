import { useState } from 'preact/hooks';
import { IconButton } from '../../../src/ui/button/icon-button.tsx';
import { LiveRegion } from '../../../src/ui/live/live-region.tsx';
import { FinishPad } from '../../../src/ui/pad/finish-pad.tsx';
import { HoldButton } from '../../../src/ui/pad/hold-button.tsx';
import { ProgressBar } from '../../../src/ui/progress/progress-bar.tsx';
import { Screen } from '../../../src/ui/screen/screen.tsx';
import { Toast } from '../../../src/ui/toast/toast.tsx';

/** A pad that counts; every third row is a shaping row. */
export function PadPage() {
  const [row, setRow] = useState(1);
  const [locked, setLocked] = useState(false);
  const [message, setMessage] = useState<string>();
  const shaping = row % 3 === 0 ? ({ notch: 'left', turn: 'decrease' } as const) : undefined;
  const finish = () => {
    setRow(row + 1);
    setMessage(`Row ${row} is done.`);
  };
  return (
    <Screen
      title="Pad"
      actions={<IconButton icon="lock" label="Lock" onPress={() => setLocked(true)} />}
      foot={
        <>
          <Toast
            text={message}
            undo={{ label: 'Take back', onPress: () => setRow(row - 1) }}
            onGone={() => setMessage(undefined)}
            stayMs={400}
          />
          {locked ? (
            <HoldButton label="Hold to unlock" onHeld={() => setLocked(false)} />
          ) : (
            <FinishPad
              label="Row done"
              hand={new URLSearchParams(location.search).get('hand') === 'left' ? 'left' : 'right'}
              shaping={shaping}
              beside={<IconButton icon="undo" label="Undo" onPress={() => setRow(Math.max(1, row - 1))} />}
              onFinish={finish}
            />
          )}
        </>
      }
    >
      <ProgressBar label="Rows" valueText={`row ${row} of 40`} value={row} max={40} marks={[3, 6, 9]} />
      <p data-row={row}>Row {row}</p>
      <LiveRegion text={`Row ${row} of 40`} />
    </Screen>
  );
}
