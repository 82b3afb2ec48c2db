import { say } from '../words/say.ts';

/** 'Front: Left shoulder', 'Sleeve, no. 2'; needs the catalogue 'craft'. A part that is the whole piece is named once. */
export function saysMake(piece: string, part: string, make: number, makes: number): string {
  const copy = makes > 1 ? say('craft.make', { piece, make }) : piece;
  return part === piece || part === '' ? copy : say('craft.part', { piece: copy, part });
}
