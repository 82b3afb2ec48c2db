import type { Phrase } from '../making-up/phrases.ts';
import type { BandEdge } from '../making-up/step.ts';
import type { Terms } from '../row/row-words.ts';
import type { SaysLength } from './says-length.ts';
import type { JoiningWords } from './written-words.ts';

/**
 * The making up as leaflets say it. Each line begins with a word that tells without rows, so that the text is read back. The
 * ways of seams are common practice, no published source.
 */
export function englishJoining(terms: Terms): JoiningWords {
  const off = terms === 'US' ? 'bound off' : 'cast off';
  return {
    title: {
      block: ({ piece, makes }) => `Block ${lower(piece)}${makes > 1 ? `, ${makes} times` : ''}`,
      shoulders: ({ seams, side = 'right' }) =>
        seams > 1 ? 'Join both shoulder seams' : `Join the ${side} shoulder seam`,
      'pick up': ({ band }) => `Work the ${lower(band)} as given above`,
      close: ({ seam }) =>
        seam &&
        (seam.of === 'raglan'
          ? `Sew the ${seam.line} raglan seam`
          : `Join the ${seam.line.split(' ')[0]} shoulder seam`),
      'neck edge': () => undefined,
      raglan: () => 'Sew raglan seams',
      'set in sleeves': () => 'Set in sleeves',
      'side seams': () => 'Sew side seams',
      'sleeve seams': () => 'Sew sleeve seams',
      buttons: () => 'Sew on buttons',
      opening: ({ of }) => `Close the opening of the ${of}`,
      lap: () => undefined,
      ends: () => undefined,
      join: ({ edges: [a, b] }) =>
        a && b ? `Join ${lower(a.stretch.piece)} to ${lower(b.stretch.piece)}` : 'Join by hand',
    },
    nos: (nos) => `, no. ${nos.join(', ')}`,
    colon: ':',
    goesOn: (line) => line.charAt(0).toLowerCase() + line.slice(1),
    said: {
      'block to': ({ widthMm, heightMm }, length) => `${length(widthMm)} wide, ${length(heightMm)} high.`,
      edges,
      way: ({ how }) =>
        how === 'three-needle'
          ? `Seam by ${terms === 'US' ? 'binding' : 'casting'} off both edges together with a third needle, right sides together.`
          : ways[how],
      'picked up': ({ total }) => `${total} stitches in all.`,
      ratio: ({ ratio }) => `Allow ${ratio.stitches} of ${ratio.rows} along rows.`,
      'a shoulder waits': ({ worn }) => `The ${worn} shoulder stays open until the band is done.`,
      'a line waits': ({ line }) => `The ${line} one stays open until the band is done.`,
      // it is what the line begins with
      'first the open shoulder': () => [],
      'first the open line': () => [],
      'ends of the band': ({ band, rows }) =>
        `Sew the ends of the ${lower(band)} together: ${rows} rows to ${rows} rows.`,
      neck: ({ edges: all, total }) => [
        ...all.map(neckEdge),
        `Allow about ${total} stitches in all for a band.`,
      ],
      'raglan lines': ({ which }) => raglanLines[which],
      underarm: ({ underarm: { stitches, rows }, isOwn }) =>
        `At the underarm sew ${stitches} ${off} stitches to ${isOwn ? 'those of the sleeve' : `the ${rows} topmost rows of the sleeve’s side`}.`,
      marker: ({ rows, mm }, length) =>
        `Mark side edges ${rows} rows (${length(mm)}) below the shoulder seam, and set in between the markers.`,
      quarters: ({ rows }) => `Pin the quarter points, from the underarm up: rows ${rows.join(' / ')}.`,
      'top and armhole': ({ topMm, armholeMm, meet }, length) =>
        `The sleeve’s edge is ${length(topMm)}, the armhole ${length(armholeMm)}${meet ? '' : '; ease the longer one in evenly'}.`,
      loop: ({ rows, of }) =>
        `${rows} rows deep, with a button on ${of === 'back' ? 'one side and a loop on the other' : 'the edge of the back and a loop on that of the sleeve'}.`,
      lap: ({ of, rows }) => {
        if (of === 'left shoulder')
          return `Lay the left front shoulder with its band, ${rows} rows, over the back one. Sew the two layers together at the armhole only.`;
        return of === 'both shoulders'
          ? `Lay the back with its band, ${rows} rows, over the front, and the front’s band under the back: the edges of both shoulders meet. Sew the layers together at each armhole only; the sleeve is sewn through both, and its armhole measured once, on the upper layer.`
          : `Lay the band with the holes over the other, ${rows} rows each. Sew its lower end to the stitches ${off} below it, and the lower end of the other behind it.`;
      },
      'buttons below': ({ count }) =>
        `Sew ${count === 1 ? '1 button' : `${count} buttons`} to the back below the holes.`,
      holes: ({ band, stitches }) =>
        `The holes of the ${lower(band)} lie ${stitches.join(' / ')} stitches above its lower end.`,
      'buttons opposite': ({ on }) =>
        `Sew the buttons to the ${on === undefined ? 'other band' : lower(on)}, opposite the holes.`,
      joined,
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
    },
  };
}

const ways = {
  mattress: 'Sew in mattress stitch.',
  grafted: 'Seam by grafting the edges together.',
  sewn: 'Sew edge to edge, flat.',
} as const;

const raglanLines = {
  four: 'All four lines, from the underarm up to the neck:',
  three: 'Three lines, from the underarm up to the neck:',
  'of one sleeve': 'The lines of this sleeve, from the underarm up to the neck:',
  'one has an opening': 'Three lines, from the underarm up to the neck:',
} as const;

const lower = (name: string): string => name.toLowerCase();

/** '30 stitches to 30 stitches', '60 rows to 62 rows, one more of the longer edge after every 30' */
function edges({
  unit,
  both,
  isFarOff,
}: Pick<Extract<Phrase, { say: 'edges' }>, 'unit' | 'both' | 'isFarOff'>) {
  const { first, second, oneMoreEvery } = both;
  const met = `${first} ${unit} to ${second} ${unit}`;
  if (isFarOff) return `${met}: these do not match.`;
  return oneMoreEvery > 0 ? `${met}, one more of the longer edge after every ${oneMoreEvery}.` : `${met}.`;
}

function joined(
  { unit, edges: [a, b], both, isFarOff }: Extract<Phrase, { say: 'joined' }>,
  length: SaysLength,
): string {
  return unit === 'mm' ? `${length(a.mm)} to ${length(b.mm)}.` : edges({ unit, both, isFarOff });
}

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along !== 'side of neck' || rows === undefined || ratio === undefined)
    return `Allow ${stitches} along the ${along}, one for each stitch.`;
  return `Allow ${stitches} along each side of the neck, ${ratio.stitches} of ${ratio.rows} along its ${rows} rows.`;
}
