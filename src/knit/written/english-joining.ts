import type { Phrase, PlainPhrase } from '../making-up/phrases.ts';
import type { BandEdge } from '../making-up/step.ts';
import type { Terms } from '../row/row-words.ts';
import {
  BEHIND_TITLE,
  eitherSide,
  figured,
  laps,
  loops,
  OTHER_BAND,
  plain,
  raglanLines,
  THEN,
  titles,
  ways,
} from './making-up-table.ts';
import { fill } from './template.ts';
import type { JoiningWords } from './written-words.ts';

/** The making up as leaflets say it: the sentences of its table, filled in, so that the text is read back. */
export const englishJoining = (terms: Terms): JoiningWords => ({
  title,
  nos: (nos) => fill(BEHIND_TITLE.nos, { nos: nos.join(', ') }),
  colon: BEHIND_TITLE.colon,
  goesOn: (line) => line.charAt(0).toLowerCase() + line.slice(1),
  said: { ...plain, ...saidIn(terms) },
});

const lower = (name: string): string => name.toLowerCase();

const title: JoiningWords['title'] = {
  block: ({ piece, makes }) =>
    fill(titles.block, { piece: lower(piece), times: makes > 1 ? makes : undefined }),
  shoulders: ({ seams, side = 'right' }) =>
    seams > 1 ? fill(titles['both shoulders'], {}) : fill(titles['one shoulder'], { side }),
  'pick up': ({ band }) => fill(titles.band, { band: lower(band) }),
  close: ({ seam }) =>
    seam &&
    (seam.of === 'raglan'
      ? fill(titles['one line'], { line: seam.line })
      : fill(titles['one shoulder'], { side: seam.line.split(' ')[0] })),
  'neck edge': () => undefined,
  raglan: () => fill(titles.raglan, {}),
  'set in sleeves': () => fill(titles['set in'], {}),
  'side seams': () => fill(titles.side, {}),
  'sleeve seams': () => fill(titles.sleeve, {}),
  buttons: () => fill(titles.buttons, {}),
  opening: ({ of }) => fill(titles.opening, { of }),
  lap: () => undefined,
  ends: () => undefined,
  join: ({ edges: [a, b] }) =>
    a && b
      ? fill(titles.join, { a: lower(a.stretch.piece), b: lower(b.stretch.piece) })
      : fill(titles['by hand'], {}),
};

function saidIn(terms: Terms): Omit<JoiningWords['said'], PlainPhrase> {
  const [off, offing] = [eitherSide.off[terms], eitherSide.offing[terms]];
  return {
    'block to': ({ widthMm, heightMm }, length) =>
      fill(figured['block to'], { width: length(widthMm), height: length(heightMm) }),
    edges,
    way: ({ how }) => fill(ways[how], { offing }),
    'picked up': ({ total }) => fill(figured['picked up'], { total }),
    ratio: ({ ratio }) => fill(figured.ratio, ratio),
    share: ({ percent }) => fill(figured.share, { percent }),
    'a shoulder waits': ({ worn }) => fill(figured['a shoulder waits'], { side: worn }),
    'a line waits': ({ line }) => fill(figured['a line waits'], { line }),
    // it is what the line begins with
    'first the open shoulder': () => [],
    'first the open line': () => [],
    'ends of the band': ({ band, rows }) => fill(figured['ends of the band'], { band: lower(band), rows }),
    neck: ({ edges: all, total }) => [...all.map(neckEdge), fill(figured['in all'], { total })],
    'raglan lines': ({ which }) => raglanLines[which],
    underarm: ({ underarm, isOwn }) => fill(figured[isOwn ? 'underarm' : 'indent'], { ...underarm, off }),
    marker: ({ rows, mm }, length) => fill(figured.marker, { rows, height: length(mm) }),
    quarters: ({ rows }) => fill(figured.quarters, { list: rows.join(`, ${THEN} `) }),
    'top and armhole': ({ topMm, armholeMm, meet }, length) =>
      fill(figured[meet ? 'top and armhole' : 'top eased in'], {
        width: length(topMm),
        height: length(armholeMm),
      }),
    loop: ({ rows, of }) => fill(loops[of], { rows }),
    lap: ({ of, rows, band = '' }) => fill(laps[of], { rows, off, band: lower(band) }),
    'buttons below': ({ count }) =>
      fill(figured[count === 1 ? 'a button below' : 'buttons below'], { total: count }),
    holes: ({ band, stitches }) =>
      fill(figured.holes, { band: lower(band), list: stitches.join(`, ${THEN} `) }),
    'buttons opposite': ({ on }) =>
      fill(figured['buttons opposite'], { on: on === undefined ? OTHER_BAND : lower(on) }),
    joined: ({ unit, edges: [a, b], both, isFarOff }, length) =>
      unit === 'mm'
        ? fill(figured.lengths, { width: length(a.mm), height: length(b.mm) })
        : edges({ unit, both, isFarOff }),
  };
}

/** '30 stitches to 30 stitches', '60 rows to 62 rows, one more of the longer edge after every 30' */
function edges({
  unit,
  both: { first, second, oneMoreEvery },
  isFarOff,
}: Pick<Extract<Phrase, { say: 'edges' }>, 'unit' | 'both' | 'isFarOff'>): string {
  if (isFarOff) return fill(figured['edges far off'], { first, second, unit });
  return fill(figured.edges, { first, second, unit, every: oneMoreEvery > 0 ? oneMoreEvery : undefined });
}

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along !== 'side of neck' || rows === undefined || ratio === undefined)
    return fill(figured['along an edge'], { stitches, edge: along });
  return fill(figured['along a side'], { stitches, total: ratio.stitches, every: ratio.rows, rows });
}
