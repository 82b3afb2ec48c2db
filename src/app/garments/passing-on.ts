import type { Result } from '../../knit/fault.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { garmentToLink } from '../../store/share/link.ts';
import { partsOfLink } from '../../store/share/link-parts.ts';
import { ask, only } from '../off-thread/ask.ts';
import { hrefTo } from '../routes.ts';
import { garmentOf } from './garment-of.ts';

/** The whole address at which anyone opens this garment; everything is behind the '#'. */
export async function linkFor(garment: GarmentRecord, withNotes: boolean): Promise<string> {
  const text = await garmentToLink(forAnother(garmentOf(garment)), { withNotes });
  return `${location.origin}${location.pathname}${hrefTo('openLink', { text })}`;
}

/** How many balls she has, and of which dye lot, is nothing to another knitter. */
function forAnother({ yarns, ...garment }: Garment): Garment {
  if (yarns === undefined) return garment;
  return { ...garment, yarns: yarns.map(({ balls: _balls, dyeLot: _lot, ...yarn }) => yarn) };
}

/** The page on which this garment is turned to another yarn and begun anew; the one that there is stays as it is. */
export async function againFor(garment: GarmentRecord): Promise<string> {
  const text = await garmentToLink(forAnother(garmentOf(garment)), { withNotes: true });
  return hrefTo('openLink', { text });
}

/** Characters of a code that a camera still reads from a phone's screen: version 13 of ISO/IEC 18004, 69 modules wide. */
export const CODE_ROOM = 400;

/** What the codes of a link say, one or several; undefined where it is too long for codes. */
export function codesOf(link: string): readonly string[] | undefined {
  const at = link.lastIndexOf('/') + 1;
  return partsOfLink(link.slice(at), CODE_ROOM - at)?.map((part) => link.slice(0, at) + part);
}

/** The garment that a link's text holds, checked whole beside the page; nothing is stored by reading it. */
export function garmentInLink(text: string): ReadingLink {
  const asked = ask('link', text);
  const garment = only(asked).then((answer) => (answer?.ok ? answer.value : answer));
  return { garment, stop: asked.stop };
}

export interface ReadingLink {
  /** undefined where it was stopped */
  readonly garment: Promise<Result<Garment> | undefined>;
  readonly stop: () => void;
}

/** A file that passes one garment on holds its link, and is far smaller than any backup. */
const LONGEST_LINK_FILE = 100_000;

/** The address that a file of one garment leads to; undefined for any other file. */
export async function linkInFile(file: Blob): Promise<string | undefined> {
  if (file.size > LONGEST_LINK_FILE) return undefined;
  const text = await file.text();
  // in a backup it may stand in a note of hers
  return text.trimStart().startsWith('{') ? undefined : /#\/open\/[\w.-]+/.exec(text)?.[0];
}
