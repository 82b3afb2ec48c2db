import * as v from 'valibot';
import { type Fault, fault, ok, type Result, refuse } from '../../knit/fault.ts';
import type { Garment } from '../../knit/piece/garment.ts';
import { plan } from '../../knit/piece/plan.ts';
import { workBudget } from '../../knit/piece/work-budget.ts';
import type { StripesOf } from '../../knit/yarn/stripes.ts';
import type { RowNote } from '../records.ts';
import { garmentEntries, LIMITS, recipe } from '../shapes/craft-shapes.ts';
import { plainJson, rowNotes, stripesEntries } from '../shapes/record-shapes.ts';
import { shapeOf } from '../shapes/shape-of.ts';
import { deflated, inflateWithin } from './deflate.ts';

/**
 * A garment as text for the fragment of a link: '1.' (version) and the garment's JSON, deflated, in base64url.
 * A fragment is never sent to a server. Notes stay at home unless they are asked for: they may be private.
 */
export const LINK_VERSION = '1';
/** of a garment with more than its recipes: an app that knows the first version only says that it is too old */
const LINK_WITH_DESIGN = '2';
/** of a striped one, likewise */
const LINK_WITH_STRIPES = '3';

/** What travels in a link: the garment, and what it may be drafted again from. */
export interface PassedOn extends Garment, StripesOf {
  /** the form of its design, without the name of whose measures they are */
  readonly design?: unknown;
  /** the sizes it is passed on in, with what was set by hand */
  readonly sizes?: unknown;
  readonly rowNotes?: readonly RowNote[];
}

const passedOn = shapeOf<PassedOn>()(
  v.strictObject({
    ...garmentEntries,
    pieces: v.pipe(v.array(recipe), v.maxLength(LIMITS.parts)),
    design: v.exactOptional(plainJson),
    sizes: v.exactOptional(plainJson),
    rowNotes: v.exactOptional(rowNotes),
    ...stripesEntries,
  }),
);

/** Longest fragment taken in, characters: far above any garment, far below what could hurt. */
export const LONGEST_LINK = 50_000;

/** Most bytes that a fragment may unfold to; an honest garment packs about 4:1. */
const MOST_BYTES = 2_000_000;

/** Stitches to work in all its rows, of fifty pullovers: a few characters can ask for rows without end. */
const MOST_STITCHES_WORKED = 5_000_000;

export interface LinkOptions {
  readonly withNotes?: boolean;
}

/** The fragment that `linkToGarment` reads back. */
export async function garmentToLink(
  garment: PassedOn,
  { withNotes = false }: LinkOptions = {},
): Promise<string> {
  const { notes, ...rest } = garment;
  const kept: PassedOn = withNotes && notes !== undefined ? { ...rest, notes } : rest;
  const hasMore = 'design' in kept || 'rowNotes' in kept;
  const plain = hasMore ? LINK_WITH_DESIGN : LINK_VERSION;
  return `${'stripes' in kept || 'restriped' in kept ? LINK_WITH_STRIPES : plain}.${toBase64Url(await deflated(JSON.stringify(kept)))}`;
}

/**
 * Reads a fragment made by `garmentToLink`. Nothing is stored by it.
 * @returns the garment, or a fault: 'link too long', 'link version', 'link damaged', 'link not a garment', or what
 *   the planner says of a piece that cannot be knitted
 */
export async function linkToGarment(text: string): Promise<Result<PassedOn>> {
  if (text.length > LONGEST_LINK) return refuse(tooLong(text.length));
  const dot = text.indexOf('.');
  const version = text.slice(0, dot);
  if (dot < 1 || !/^\d{1,4}$/.test(version)) return refuse(damaged());
  if (![LINK_VERSION, LINK_WITH_DESIGN, LINK_WITH_STRIPES].includes(version))
    return refuse(laterVersion(version));
  const json = await unfold(text.slice(dot + 1));
  if (json === undefined) return refuse(damaged());
  const read = v.safeParse(passedOn, json);
  if (!read.success) return refuse(notGarment(read.issues[0]));
  const budget = workBudget(MOST_STITCHES_WORKED);
  for (const piece of read.output.pieces) {
    const made = plan(piece, budget);
    if (!made.ok) return made;
  }
  return ok(read.output);
}

async function unfold(packed: string): Promise<unknown> {
  try {
    const bytes = fromBase64Url(packed);
    return bytes && JSON.parse(await inflateWithin(bytes, MOST_BYTES));
  } catch {
    return undefined;
  }
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]+$/.test(text)) return undefined;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (c) => c.charCodeAt(0));
}

const tooLong = (length: number): Fault =>
  fault('link too long', { characters: length, mostCharacters: LONGEST_LINK });

const laterVersion = (version: string): Fault => fault('link version', { version });

const damaged = (): Fault => fault('link damaged');

const notGarment = (issue: v.BaseIssue<unknown>): Fault =>
  fault('link not a garment', { whereText: v.getDotPath(issue) ?? 'its content' });
