import type { Feel } from './feels.ts';

/** Vibration in ms, on and off in turn: what the hand is told about the row that comes now. */
const buzzes: Readonly<Record<Feel, readonly number[]>> = {
  plain: [25],
  shaping: [70, 60, 70],
  'before row': [30, 40, 30, 40, 30],
  'section end': [25, 60, 180],
  'part end': [300, 90, 300],
};

/** Tones in Hz, one after the other: plain is one short low tick, shaping rises, an end falls, three alike ask to look. */
const tones: Readonly<Record<Feel, readonly number[]>> = {
  plain: [330],
  shaping: [494, 740],
  'before row': [587, 587, 587],
  'section end': [494, 330, 247],
  'part end': [494, 330, 494, 247],
};

const BETWEEN_MS = 150;
const TONE_S = 0.07;
const LOUDNESS = 0.12;

let audio: AudioContext | undefined;

/** One vibration for all that there is to tell. */
export function buzz(feels: readonly Feel[]): void {
  // refused where nobody has touched the page yet, and absent on some phones: the mark on the screen says the same
  if ('vibrate' in navigator) navigator.vibrate(buzzOf(feels));
}

export const buzzOf = (feels: readonly Feel[]): number[] =>
  feels.flatMap((feel, i) => (i === 0 ? buzzes[feel] : [BETWEEN_MS, ...buzzes[feel]]));

export function tick(feels: readonly Feel[]): void {
  audio ??= new AudioContext();
  if (audio.state === 'suspended') void audio.resume();
  const from = audio.currentTime;
  const line = feels.flatMap((feel) => tones[feel]);
  for (const [i, hertz] of line.entries()) sound(audio, hertz, from + i * TONE_S * 1.4);
}

function sound(context: AudioContext, hertz: number, at: number): void {
  const voice = context.createOscillator();
  const volume = context.createGain();
  voice.frequency.value = hertz;
  volume.gain.setValueAtTime(LOUDNESS, at);
  volume.gain.exponentialRampToValueAtTime(0.001, at + TONE_S);
  voice.connect(volume).connect(context.destination);
  voice.start(at);
  voice.stop(at + TONE_S);
}
