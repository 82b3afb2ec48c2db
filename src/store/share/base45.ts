/**
 * Bytes in the 45 signs that a QR code packs most tightly (its alphanumeric mode), as RFC 9285 has it: two bytes are
 * three signs, a last single byte two.
 */
const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';

export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const isPair = i + 1 < bytes.length;
    let value = isPair ? (bytes[i] ?? 0) * 256 + (bytes[i + 1] ?? 0) : (bytes[i] ?? 0);
    for (let sign = 0; sign < (isPair ? 3 : 2); sign += 1) {
      text += SIGNS[value % 45];
      value = Math.floor(value / 45);
    }
  }
  return text;
}

/** Undefined for what is no such text. */
export function fromBase45(text: string): Uint8Array<ArrayBuffer> | undefined {
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const digits = Array.from(text.slice(i, i + 3), (sign) => SIGNS.indexOf(sign));
    const value = digits.reduceRight((sum, digit) => sum * 45 + digit, 0);
    const isPair = digits.length === 3;
    if (digits.length < 2 || digits.includes(-1) || value >= (isPair ? 65_536 : 256)) return undefined;
    if (isPair) bytes.push(value >> 8);
    bytes.push(value & 255);
  }
  return Uint8Array.from(bytes);
}
