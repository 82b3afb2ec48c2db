import type { Result } from '../../knit/fault.ts';
import { type Garment, yarnForAnother } from '../../knit/piece/garment.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { garmentToLink, type PassedOn } from '../../store/share/link.ts';
import { partsOfLink } from '../../store/share/link-parts.ts';
import { readKept } from '../drafts/kept/read-kept.ts';
import { ask, only } from '../off-thread/ask.ts';
import { hrefTo } from '../routes.ts';
import type { GarmentView } from '../state.ts';
import { garmentOf } from './garment-of.ts';
import { type SizeSet, sizeName } from './size-set.ts';
import { stripesToPass } from './stripes-to-pass.ts';

export interface ToPass {
  readonly withNotes: boolean;
  /** with the design, where there is one, so that others draft it in their own size */
  readonly withDesign?: boolean;
  readonly withRowNotes?: boolean;
}

/** The whole address at which anyone opens this garment; everything is behind the '#'. */
export async function linkFor(garment: GarmentRecord, to: ToPass): Promise<string> {
  const { withNotes, withDesign = false, withRowNotes = false } = to;
  const { rowNotes } = garment;
  const passed: PassedOn = {
    ...forAnother(garmentOf(garment)),
    ...(withDesign && (await designToPass(garment))),
    ...stripesToPass(garment),
    ...(withRowNotes && rowNotes?.length && { rowNotes }),
  };
  const text = await garmentToLink(passed, { withNotes });
  return `${location.origin}${location.pathname}${hrefTo('openLink', { text })}`;
}

/** The design without whose it is: no name of the form, nobody’s measures by name. */
async function designToPass({ design, sizes }: GarmentRecord): Promise<Pick<PassedOn, 'design' | 'sizes'>> {
  const [form, set] = await Promise.all([readKept('designForm', design), readKept('sizeSet', sizes)]);
  if (!form.ok || form.value === undefined) return {};
  const { name: _whose, ...person } = form.value.person;
  return {
    design: { ...form.value, name: '', person },
    ...(set.ok && set.value && { sizes: withoutPeople(set.value) }),
  };
}

const withoutPeople = (set: SizeSet): SizeSet => {
  const whose = set.people.map(({ name }) => sizeName(name));
  return { ...set, people: [], adjusted: set.adjusted.filter(({ size }) => !size || !whose.includes(size)) };
};

function forAnother({ yarns, ...garment }: Garment): Garment {
  return yarns === undefined ? garment : { ...garment, yarns: yarns.map(yarnForAnother) };
}

/**
 * The page on which this garment is turned to another yarn and begun anew; the one that there is stays as it is. What she
 * planned anew while knitting is in it, or its pieces would not meet those that she changed to match.
 */
export async function againFor(view: GarmentView): Promise<string> {
  const { asPassedOn } = await import('./as-made.ts');
  const garment = asPassedOn(view);
  const passed = { ...forAnother(garmentOf(garment)), ...stripesToPass(garment) };
  const text = await garmentToLink(passed, { withNotes: true });
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
  readonly garment: Promise<Result<PassedOn> | undefined>;
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
