const signs = '0123456789abcdefghijklmnopqrstuvwxyz';

/** Random letters and digits, five bits and more each. */
export function randomId(length: number): string {
  let id = '';
  for (const byte of crypto.getRandomValues(new Uint8Array(length))) id += signs[byte % signs.length];
  return id;
}

/** Ids that start with the device's own letters, so that a log tells which device wrote what. */
export const entryId = (device: string): string => `${device}-${randomId(14)}`;
