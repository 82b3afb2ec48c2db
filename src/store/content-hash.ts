/**
 * A short name for a text: 64 bits in letters and digits, the same on every device. Two lanes of multiply and shift as
 * in the finishers of common hash functions (from memory). Against chance, not against someone who means harm: among
 * a million plans two differing ones with one name are less likely than 1 in 10 million (birthday bound, n² / 2⁶⁵).
 */
export function contentHash(text: string): string {
  let one = 0xdeadbeef;
  let two = 0x41c6ce57;
  for (let i = 0; i < text.length; i += 1) {
    const sign = text.charCodeAt(i);
    one = Math.imul(one ^ sign, 0x9e3779b1);
    one ^= one >>> 15;
    two = Math.imul(two ^ sign, 0x85ebca6b);
    two ^= two >>> 13;
  }
  one = mixed(one ^ (two >>> 7));
  two = mixed(two ^ (one >>> 5));
  return lettersOf(one) + lettersOf(two);
}

function mixed(lane: number): number {
  const once = Math.imul(lane ^ (lane >>> 16), 0x21f0aaad);
  const twice = Math.imul(once ^ (once >>> 15), 0x735a2d97);
  return (twice ^ (twice >>> 15)) >>> 0;
}

/** 32 bits in seven signs */
const lettersOf = (lane: number): string => lane.toString(36).padStart(7, '0');
