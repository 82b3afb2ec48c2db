import { useEffect } from 'preact/hooks';
import { type Devices, phone } from '../../app/device/phone.ts';
import { finishRow, undoRow } from '../../app/in-hand/knit.ts';
import { settings } from '../../app/settings/settings.ts';
import { languageTag } from '../../words/say.ts';

const turns = { forward: () => void finishRow(), back: () => void undoRow() };

/** The phone serves the knitting screen for as long as it is in sight: awake, keys, headset. */
export function useDevices(title: string): void {
  const { keys, headset } = settings.value;
  useDevice((devices) => devices.stayAwake(), []);
  useDevice((devices) => devices.onPageKeys(turns, keys), [keys]);
  useDevice((devices) => (headset ? devices.onHeadset(turns, title) : undefined), [headset, title]);
}

/** Reads each new sentence aloud where she has asked for it; not the one she comes to. */
export function useVoice(sentence: string, stored: number): void {
  const wanted = settings.value.voice && stored > 0 && sentence !== '';
  useDevice(
    (devices) => {
      if (wanted) devices.readAloud(sentence, languageTag());
      return undefined;
    },
    // said when a row was stored, not when words or settings change
    [stored],
  );
  useDevice((devices) => devices.hush, []);
}

/** An effect on the phone; what it begins is ended when its inputs change, or when the screen goes before it was loaded. */
function useDevice(begin: (devices: Devices) => (() => void) | undefined, inputs: readonly unknown[]): void {
  useEffect(() => {
    let gone = false;
    let end: (() => void) | undefined;
    void phone().then((devices) => {
      if (!gone) end = begin(devices);
    });
    return () => {
      gone = true;
      end?.();
    };
  }, inputs);
}
