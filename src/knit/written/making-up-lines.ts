import type { SeamWay } from '../making-up/joint.ts';
import { type Phrase, phrasesOf, type plainPhrases } from '../making-up/phrases.ts';
import type { BandEdge, MakingUpStep } from '../making-up/step.ts';
import type { Terms } from '../row/row-words.ts';
import type { SaysLength } from './says-length.ts';

/**
 * A step of the making up as leaflets say it, in English: what it is and, in a line each, what is told of it. The order
 * and the ways of seams are common practice, no published source.
 */
export function makingUpLines(step: MakingUpStep, terms: Terms, length: SaysLength): string[] {
  const nos = step.nos ? `, no. ${step.nos.join(', ')}` : '';
  const title = titleOf(step);
  const said = phrasesOf(step).flatMap((phrase) => saidOf(phrase, terms, length));
  return (title === undefined ? said : [`${title}${nos}:`, ...said]).reduce<string[]>(onOneLine, []);
}

/** What leads on to the next words stands on one line with them. */
function onOneLine(lines: string[], line: string): string[] {
  const last = lines.at(-1);
  if (last?.endsWith(':') !== true) return [...lines, line];
  return [...lines.slice(0, -1), `${last} ${line.charAt(0).toLowerCase()}${line.slice(1)}`];
}

/** Each line begins with a word that tells without rows, so that the text is read back. */
function titleOf(step: MakingUpStep): string | undefined {
  switch (step.kind) {
    case 'block':
      return `Block ${lower(step.piece)}${step.makes > 1 ? `, ${step.makes} times` : ''}`;
    case 'shoulders':
      return step.seams > 1 ? 'Join both shoulder seams' : `Join the ${step.side ?? 'right'} shoulder seam`;
    case 'pick up':
      return `Work the ${lower(step.band)} as given above`;
    case 'close':
      return step.seam && openSeam(step.seam);
    case 'neck edge':
      return undefined;
    case 'raglan':
      return 'Sew raglan seams';
    case 'set in sleeves':
      return 'Set in sleeves';
    case 'side seams':
      return 'Sew side seams';
    case 'sleeve seams':
      return 'Sew sleeve seams';
    case 'buttons':
      return 'Sew on buttons';
    case 'opening':
      return `Close the opening of the ${step.of}`;
    case 'lap':
    case 'ends':
      return undefined;
    case 'join': {
      const [a, b] = step.edges;
      return a && b ? `Join ${lower(a.stretch.piece)} to ${lower(b.stretch.piece)}` : 'Join by hand';
    }
  }
}

const openSeam = ({ of, line }: NonNullable<Extract<MakingUpStep, { kind: 'close' }>['seam']>): string =>
  of === 'raglan' ? `Sew the ${line} raglan seam` : `Join the ${line.split(' ')[0]} shoulder seam`;

function saidOf(phrase: Phrase, terms: Terms, length: SaysLength): string | readonly string[] {
  const off = terms === 'US' ? 'bound off' : 'cast off';
  switch (phrase.say) {
    case 'block to':
      return `${length(phrase.widthMm)} wide, ${length(phrase.heightMm)} high.`;
    case 'edges':
      return edges(phrase);
    case 'way':
      return ways(terms)[phrase.how];
    case 'picked up':
      return `${phrase.total} stitches in all.`;
    case 'ratio':
      return `Allow ${phrase.ratio.stitches} of ${phrase.ratio.rows} along rows.`;
    case 'a shoulder waits':
      return `The ${phrase.worn} shoulder stays open until the band is done.`;
    case 'a line waits':
      return `The ${phrase.line} one stays open until the band is done.`;
    case 'first the open shoulder':
    case 'first the open line':
      // it is what the line begins with
      return [];
    case 'ends of the band':
      return `Sew the ends of the ${lower(phrase.band)} together: ${phrase.rows} rows to ${phrase.rows} rows.`;
    case 'neck':
      return [...phrase.edges.map(neckEdge), `Allow about ${phrase.total} stitches in all for a band.`];
    case 'raglan lines':
      return raglanLines[phrase.which];
    case 'underarm': {
      const { stitches, rows } = phrase.underarm;
      return `At the underarm sew ${stitches} ${off} stitches to ${phrase.isOwn ? 'those of the sleeve' : `the ${rows} topmost rows of the sleeve’s side`}.`;
    }
    case 'marker':
      return `Mark side edges ${phrase.rows} rows (${length(phrase.mm)}) below the shoulder seam, and set in between the markers.`;
    case 'quarters':
      return `Pin the quarter points, from the underarm up: rows ${phrase.rows.join(' / ')}.`;
    case 'top and armhole':
      return `The sleeve’s edge is ${length(phrase.topMm)}, the armhole ${length(phrase.armholeMm)}${phrase.meet ? '' : '; ease the longer one in evenly'}.`;
    case 'loop':
      return `${phrase.rows} rows deep, with a button on ${phrase.of === 'back' ? 'one side and a loop on the other' : 'the edge of the back and a loop on that of the sleeve'}.`;
    case 'lap':
      return laps(off)[phrase.of](phrase.rows);
    case 'buttons below':
      return `Sew ${phrase.count === 1 ? '1 button' : `${phrase.count} buttons`} to the back below the holes.`;
    case 'holes':
      return `The holes of the ${lower(phrase.band)} lie ${phrase.stitches.join(' / ')} stitches above its lower end.`;
    case 'buttons opposite':
      return `Sew the buttons to the ${phrase.on === undefined ? 'other band' : lower(phrase.on)}, opposite the holes.`;
    case 'joined':
      return joined(phrase, length);
    default:
      return plain[phrase.say];
  }
}

const plain: Readonly<Record<(typeof plainPhrases)[number], string>> = {
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
};

const ways = (terms: Terms): Readonly<Record<SeamWay, string>> => ({
  mattress: 'Sew in mattress stitch.',
  'three-needle': `Seam by ${terms === 'US' ? 'binding' : 'casting'} off both edges together with a third needle, right sides together.`,
  grafted: 'Seam by grafting the edges together.',
  sewn: 'Sew edge to edge, flat.',
});

const raglanLines = {
  four: 'All four lines, from the underarm up to the neck:',
  three: 'Three lines, from the underarm up to the neck:',
  'of one sleeve': 'The lines of this sleeve, from the underarm up to the neck:',
  'one has an opening': 'Three lines, from the underarm up to the neck:',
} as const;

/** How each opening lies over itself, and what of it is sewn. */
const laps = (off: string) =>
  ({
    'left shoulder': (rows: number) =>
      `Lay the left front shoulder with its band, ${rows} rows, over the back one. Sew the two layers together at the armhole only.`,
    'both shoulders': (rows: number) =>
      `Lay the back with its band, ${rows} rows, over the front, and the front’s band under the back: the edges of both shoulders meet. Sew the layers together at each armhole only; the sleeve is sewn through both, and its armhole measured once, on the upper layer.`,
    placket: (rows: number) =>
      `Lay the band with the holes over the other, ${rows} rows each. Sew its lower end to the stitches ${off} below it, and the lower end of the other behind it.`,
  }) as const;

const lower = (name: string): string => name.toLowerCase();

/** '30 stitches to 30 stitches', '60 rows to 62 rows, one more of the longer edge after every 30' */
function edges({ unit, both, isFarOff }: Extract<Phrase, { say: 'edges' }>): string {
  const { first, second, oneMoreEvery } = both;
  const met = `${first} ${unit} to ${second} ${unit}`;
  if (isFarOff) return `${met}: these do not match.`;
  return oneMoreEvery > 0 ? `${met}, one more of the longer edge after every ${oneMoreEvery}.` : `${met}.`;
}

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along !== 'side of neck' || rows === undefined || ratio === undefined)
    return `Allow ${stitches} along the ${along}, one for each stitch.`;
  return `Allow ${stitches} along each side of the neck, ${ratio.stitches} of ${ratio.rows} along its ${rows} rows.`;
}

function joined(
  { unit, edges: [a, b], both, isFarOff }: Extract<Phrase, { say: 'joined' }>,
  length: SaysLength,
): string {
  if (unit === 'mm') return `${length(a.mm)} to ${length(b.mm)}.`;
  return edges({ say: 'edges', unit, both, names: ['', ''], seams: 1, isFarOff });
}
