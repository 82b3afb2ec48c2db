import { useEffect } from 'preact/hooks';
import { hush, readAloud } from '../../app/device/aloud.ts';
import { onHeadset } from '../../app/device/headset.ts';
import { onPageKeys } from '../../app/device/page-keys.ts';
import { stayAwake } from '../../app/device/wake-lock.ts';
import { finishRow, undoRow } from '../../app/intents/knit.ts';
import { settings } from '../../app/settings.ts';
import { languageTag } from '../../words/say.ts';

const turns = { forward: () => void finishRow(), back: () => void undoRow() };

/** The phone serves the knitting screen for as long as it is in sight: awake, keys, headset. */
export function useDevices(title: string): void {
  const { keys, headset } = settings.value;
  useEffect(() => stayAwake(), []);
  useEffect(() => (keys ? onPageKeys(turns) : undefined), [keys]);
  useEffect(() => (headset ? onHeadset(turns, title) : undefined), [headset, title]);
  useEffect(() => hush, []);
}

/** Reads each new sentence aloud where she has asked for it; not the one she comes to. */
export function useVoice(sentence: string, stored: number): void {
  const { voice } = settings.value;
  // biome-ignore lint/correctness/useExhaustiveDependencies: said when a row was stored, not when words or settings change
  useEffect(() => {
    if (voice && stored > 0 && sentence !== '') readAloud(sentence, languageTag());
  }, [stored]);
}
