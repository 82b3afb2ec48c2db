import { MM_PER_INCH } from '../gauge.ts';
import type { SeamWay } from '../making-up/joint.ts';
import type { plainPhrases } from '../making-up/phrases.ts';
import type { Terms } from '../row/row-words.ts';

/**
 * Every sentence of the making up as leaflets say it, in English; common practice, no published source. The written
 * pattern fills them in, and what is read of a making up is read by them: neither knows another word.
 */

/** The edges that seams are called after. */
export const seamNames = { shoulder: 'shoulder', side: 'side', sleeve: 'sleeve', raglan: 'raglan' } as const;

/** What a line begins with. Each begins with a word that tells without rows, so that the text is read back. */
export const titles = {
  block: 'Block {piece}[, {times} times]',
  'both shoulders': `Join both ${seamNames.shoulder} seams`,
  'one shoulder': `Join the {side} ${seamNames.shoulder} seam`,
  'one line': `Sew the {line} ${seamNames.raglan} seam`,
  band: 'Work the {band} as given above',
  raglan: `Sew ${seamNames.raglan} seams`,
  'set in': `Set in ${seamNames.sleeve}s`,
  side: `Sew ${seamNames.side} seams`,
  sleeve: `Sew ${seamNames.sleeve} seams`,
  buttons: 'Sew on buttons',
  opening: 'Close the opening of the {of}',
  join: 'Join {a} to {b}',
  'by hand': 'Join by hand',
} as const;
export type Title = keyof typeof titles;

/** Behind what a line begins with: the makes that it is for, where not for all, and what leads on. */
export const BEHIND_TITLE = { nos: ', no. {nos}', colon: ':' } as const;

/** What a place of a sentence stands for in the words of either side of the Atlantic. */
export const eitherSide = {
  off: { US: 'bound off', UK: 'cast off' },
  offing: { US: 'binding off', UK: 'casting off' },
} as const satisfies Readonly<Record<string, Readonly<Record<Terms, string>>>>;

/** mm of a unit of length, by its word. */
export const lengthWords = { cm: 10, in: MM_PER_INCH } as const;

export const unitWords = ['rows', 'stitches'] as const;

/** By the way that a seam is sewn. */
export const ways = {
  mattress: 'Sew in mattress stitch.',
  'three-needle': 'Seam by {offing} both edges together with a third needle, right sides together.',
  grafted: 'Seam by grafting the edges together.',
  sewn: 'Sew edge to edge, flat.',
} as const satisfies Readonly<Record<SeamWay, string>>;

export const plain = {
  'one stitch in': 'Sew one whole stitch in from each edge.',
  'the left shoulder is buttoned': 'The left shoulder is buttoned, not sewn.',
  'one shoulder waits': 'Leave one shoulder open until the band is done.',
  'the left back line to its opening': 'Sew the left back one only up to its opening:',
  'middle of the top': 'Pin the middle of the top to the shoulder seam.',
  'over the head': 'Try it over the head first.',
  'before the sleeves': 'Try it over the head before the sleeves are sewn in.',
  'joined evenly': 'Sew the longer one in evenly.',
  'an edge is gone': 'One of its edges is there no more.',
  'along the seams': 'Weave in ends along the seams.',
} as const satisfies Readonly<Record<(typeof plainPhrases)[number], string>>;

export const raglanLines = {
  four: 'All four lines, from the underarm up to the neck:',
  three: 'Three lines, from the underarm up to the neck:',
  'of one sleeve': 'The lines of this sleeve, from the underarm up to the neck:',
  'one has an opening': 'Three lines, from the underarm up to the neck:',
} as const;

/** How each opening lies over itself, and what of it is sewn. */
export const laps = {
  'left shoulder':
    'Lay the left front shoulder with its band, {rows} rows, over the back one. Sew the two layers together at the armhole only.',
  'both shoulders':
    'Lay the back with its band, {rows} rows, over the front, and the front’s band under the back: the edges of both shoulders meet. Sew the layers together at each armhole only; the sleeve is sewn through both, and its armhole measured once, on the upper layer.',
  placket:
    'Lay the {band} over the other, {rows} rows each. Sew its lower end to the stitches {off} below it, and the lower end of the other behind it.',
} as const;

export const loops = {
  back: '{rows} rows deep, with a button on one side and a loop on the other.',
  raglan: '{rows} rows deep, with a button on the edge of the back and a loop on that of the sleeve.',
} as const;

/** Sentences with figures. */
export const figured = {
  'block to': '{width} wide, {height} high.',
  edges: '{first} {unit} to {second} {unit}[, one more of the longer edge after every {every}].',
  'edges far off': '{first} {unit} to {second} {unit}: these do not match.',
  lengths: '{width} to {height}.',
  'picked up': '{total} stitches in all.',
  'a shoulder waits': 'The {side} shoulder stays open until the band is done.',
  'a line waits': 'The {line} one stays open until the band is done.',
  ratio: 'Allow {stitches} of {rows} along rows.',
  share: 'Allow {percent} for each 100 stitches that the edge has room for.',
  'ends of the band': 'Sew the ends of the {band} together: {rows} rows to {rows} rows.',
  'along an edge': 'Allow {stitches} along the {edge}, one for each stitch.',
  'along a side': 'Allow {stitches} along each side of the neck, {total} of {every} along its {rows} rows.',
  'in all': 'Allow about {total} stitches in all for a band.',
  underarm: 'At the underarm sew {stitches} {off} stitches to those of the sleeve.',
  indent: 'At the underarm sew {stitches} {off} stitches to the {rows} topmost rows of the sleeve’s side.',
  marker: 'Mark side edges {rows} rows ({height}) below the shoulder seam, and set in between the markers.',
  quarters: 'Pin the quarter points, from the underarm up: rows {list}.',
  'top and armhole': 'The sleeve’s edge is {width}, the armhole {height}.',
  'top eased in': 'The sleeve’s edge is {width}, the armhole {height}; ease the longer one in evenly.',
  'a button below': 'Sew 1 button to the back below the holes.',
  'buttons below': 'Sew {total} buttons to the back below the holes.',
  holes: 'The holes of the {band} lie {list} stitches above its lower end.',
  'buttons opposite': 'Sew the buttons to the {on}, opposite the holes.',
} as const;

/** Between figures of one size: a mark alone would stand between those of two. */
export const THEN = 'then';

/** What the other band is called that has no name. */
export const OTHER_BAND = 'other band';

/** Of two fronts that are one piece, behind how often it is made. */
export const LEFT_FIRST = 'first the left front as worn, then the right';

/** Of a sleeve, there too: a straight one looks the same either way. */
export const TOP_DOWN = 'from the top down';
