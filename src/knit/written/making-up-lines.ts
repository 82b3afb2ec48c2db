import type { Ease, MakingUpStep, UnderarmSeam } from '../making-up/step.ts';
import type { Terms } from '../row/row-words.ts';
import type { SaysLength } from './says-length.ts';

/** A step of the making up as leaflets say it, in English; the order and the ways of seams are common practice, no published source. */
export function makingUpLines(step: MakingUpStep, terms: Terms, length: SaysLength): string[] {
  const nos = step.nos ? `No. ${step.nos.join(', ')}: ` : '';
  return saidOf(step, terms, length).map((line) => nos + line);
}

function saidOf(step: MakingUpStep, terms: Terms, length: SaysLength): string[] {
  const off = terms === 'US' ? 'bound off' : 'cast off';
  switch (step.kind) {
    case 'block':
      return [`Block ${lower(step.piece)}: ${length(step.widthMm)} wide, ${length(step.heightMm)} high.`];
    case 'shoulders':
      return [
        `Join ${step.seams > 1 ? 'both shoulder seams' : 'the right shoulder seam'}${shoulderWays[step.how ?? 'sewn']}: ${evenly(step.stitches, 'stitches')}.`,
        ...(step.isOtherButtoned ? ['The left shoulder is buttoned, not sewn.'] : []),
      ];
    case 'pick up':
      return [`Work the ${lower(step.band)} as given above: ${step.total} stitches in all.`];
    case 'close':
      return [
        ...(step.seam
          ? [
              `Join the left ${step.seam.of} seam${shoulderWays[step.seam.how ?? 'sewn']}: ${evenly(step.seam.both, units[step.seam.of])}.`,
            ]
          : []),
        `Sew the ends of the ${lower(step.band)} together: ${step.rows} rows to ${step.rows} rows.`,
      ];
    case 'neck edge':
      return [`A band round the neck would take about ${step.total} stitches.`];
    case 'raglan':
      return [
        ...(step.asFarAsOpening
          ? [
              `Sew ${step.seams - 1} raglan seams: ${evenly(step.rows, 'rows')}.`,
              `Sew the left back one only up to its opening: ${evenly(step.asFarAsOpening, 'rows')}.`,
            ]
          : [`Sew ${step.seams} raglan seams: ${evenly(step.rows, 'rows')}.`]),
        ...underarm(step.underarm, off),
      ];
    case 'set in sleeves':
      return [
        step.underarm.stitches > 0
          ? 'Set in sleeves, middle of the top to the shoulder seam.'
          : `Mark side edges ${length(step.markerMm)} below the shoulder seam. Set in sleeves between markers, middle of the top to the shoulder seam.`,
        ...underarm(step.underarm, off),
        `The sleeve’s edge is ${length(step.topMm)}, the armhole ${length(step.armholeMm)}; ease in evenly.`,
      ];
    case 'side seams':
      return [`Sew side seams in mattress stitch: ${evenly(step.rows, 'rows')}.`];
    case 'sleeve seams':
      return [`Sew sleeve seams in mattress stitch: ${step.rows} rows to ${step.rows} rows.`];
    case 'buttons':
      return [
        `Sew buttons to the ${step.on ? lower(step.on) : 'other band'}, opposite the holes of the ${lower(step.band)}: ${step.stitches.join(' / ')} stitches above its lower end.`,
      ];
    case 'opening':
      return [
        `Close the opening of the ${step.of}, ${step.rows} rows deep, with a button and a loop. Try it over the head first.`,
      ];
    case 'lap':
      return [`${laps[step.of](step.rows, step.buttons ?? 1)} Try it over the head first.`];
    case 'join':
      return step.edges[0] && step.edges[1]
        ? [`Sew ${lower(step.edges[0].stretch.piece)} to ${lower(step.edges[1].stretch.piece)}.`]
        : [];
    case 'ends':
      return ['Weave in ends along the seams.'];
  }
}

/** How each opening lies over itself, and what of it is sewn. */
const laps = {
  'left shoulder': (rows: number, buttons: number) =>
    `Lay the left front shoulder with its band over the back one, ${rows} rows. Sew the two layers together at the armhole only, and ${buttons === 1 ? 'a button' : `${buttons} buttons`} on the band below.`,
  'both shoulders': (rows: number) =>
    `At each shoulder lay the back with its band over the front, ${rows} rows. Sew the two layers together at the armhole only.`,
  placket: (rows: number) =>
    `Lay one band of the placket over the other, holes on top, ${rows} rows. Sew their lower ends to the stitches below, and the buttons on the band below.`,
} as const;

const lower = (name: string): string => name.toLowerCase();

const units = { shoulder: 'stitches', raglan: 'rows' } as const;

const shoulderWays = {
  sewn: '',
  mattress: ' in mattress stitch',
  grafted: ' by grafting',
  'three-needle': ' with three needles',
} as const;

/** '30 stitches to 30 stitches', '60 rows to 62 rows, one more of the longer edge after every 30' */
const evenly = ({ first, second, oneMoreEvery }: Ease, unit: string): string =>
  `${first} ${unit} to ${second} ${unit}${oneMoreEvery > 0 ? `, one more of the longer edge after every ${oneMoreEvery}` : ''}`;

const underarm = ({ stitches, rows }: UnderarmSeam, off: string): string[] =>
  stitches === 0
    ? []
    : [
        `At the underarm sew ${stitches} ${off} stitches to ${rows > 0 ? `the ${rows} topmost rows` : 'those'} of the sleeve.`,
      ];
