/**
 * When something of a garment was changed, in an order that no wrong clock can spoil: a hybrid logical clock (Kulkarni,
 * Demirbas, Madappa, Avva and Leone 2014, 'Logical Physical Clocks', OPODIS). A stamp is the highest time seen or the
 * device's own, whichever is later (ms since 1970), then a counter, then the device's letters. Who has seen a change
 * stamps above it, also when that one came from a clock a year ahead; while clocks are right it is the time. As text,
 * so that the order of stamps is that of the text.
 */
export type Stamp = string;

const TIME_SIGNS = 9;
const COUNTER_SIGNS = 5;
const MOST_COUNTED = 36 ** COUNTER_SIGNS - 1;

const stamp = (timeMs: number, counter: number, device: string): Stamp =>
  `${padded(timeMs, TIME_SIGNS)}.${padded(counter, COUNTER_SIGNS)}.${device}`;

const padded = (n: number, signs: number): string => n.toString(36).padStart(signs, '0');

/** The stamp of a change on this device, which has seen stamps up to `highest`. */
export function nextStamp(highest: Stamp | undefined, nowMs: number, device: string): Stamp {
  const [seenTime = '0', seenCounter = '0'] = (highest ?? '0').split('.');
  const seenMs = Number.parseInt(seenTime, 36);
  const own = Math.max(0, Math.floor(nowMs));
  if (own > seenMs) return stamp(own, 0, device);
  const counter = Number.parseInt(seenCounter, 36) + 1;
  return counter > MOST_COUNTED ? stamp(seenMs + 1, 0, device) : stamp(seenMs, counter, device);
}

/**
 * For what was written before there were stamps: below all of them, the later `changedAt` above the earlier one.
 * `content` names what it was, so that equal records have one stamp and others never share it.
 */
export const stampBefore = (changedAt: number, content: string): Stamp =>
  stamp(0, 0, `${padded(Math.max(0, Math.floor(changedAt)), TIME_SIGNS)}${content}`);

/** The letters of the device, or what stands for it. */
export const writerOf = (of: Stamp): string => of.slice(TIME_SIGNS + COUNTER_SIGNS + 2);

export const stampShape = /^[0-9a-z]{9}\.[0-9a-z]{5}\.[\w-]{0,64}$/;
