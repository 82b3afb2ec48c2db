/** A number and its unit: never parted at the end of a line. */
export const inUnit = (number: string, unit: string): string => `${number}\u00a0${unit}`;
