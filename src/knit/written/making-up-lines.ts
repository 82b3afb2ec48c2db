import { type Phrase, phrasesOf } from '../making-up/phrases.ts';
import type { BandEdge, MakingUpStep } from '../making-up/step.ts';
import type { Terms } from '../row/row-words.ts';
import {
  eitherSide,
  figured,
  laps,
  loops,
  OTHER_BAND,
  plain,
  raglanLines,
  titles,
  ways,
} from './making-up-table.ts';
import type { SaysLength } from './says-length.ts';
import { fill } from './template.ts';

/** A step of the making up in English: what it is and, in a line each, what is told of it. */
export function makingUpLines(step: MakingUpStep, terms: Terms, length: SaysLength): string[] {
  const title = titleOf(step, step.nos?.join(', '));
  const said = phrasesOf(step).flatMap((phrase) => saidOf(phrase, terms, length));
  return (title === undefined ? said : [title, ...said]).reduce<string[]>(onOneLine, []);
}

/** What leads on to the next words stands on one line with them. */
function onOneLine(lines: string[], line: string): string[] {
  const last = lines.at(-1);
  if (last?.endsWith(':') !== true) return [...lines, line];
  return [...lines.slice(0, -1), `${last} ${line.charAt(0).toLowerCase()}${line.slice(1)}`];
}

/** @param nos of the makes that it is for, where not for all */
function titleOf(step: MakingUpStep, nos: string | undefined): string | undefined {
  switch (step.kind) {
    case 'block': {
      const times = step.makes > 1 ? step.makes : undefined;
      return fill(titles.block, { piece: lower(step.piece), times, nos });
    }
    case 'shoulders':
      if (step.seams > 1) return fill(titles['both shoulders'], { nos });
      return fill(titles['one shoulder'], { side: step.side ?? 'right', nos });
    case 'pick up':
      return fill(titles.band, { band: lower(step.band), nos });
    case 'close':
      return step.seam && openSeam(step.seam, nos);
    case 'raglan':
      return fill(titles.raglan, { nos });
    case 'set in sleeves':
      return fill(titles['set in'], { nos });
    case 'side seams':
      return fill(titles.side, { nos });
    case 'sleeve seams':
      return fill(titles.sleeve, { nos });
    case 'buttons':
      return fill(titles.buttons, { nos });
    case 'opening':
      return fill(titles.opening, { of: step.of, nos });
    case 'neck edge':
    case 'lap':
    case 'ends':
      return undefined;
    case 'join': {
      const [a, b] = step.edges;
      if (!a || !b) return fill(titles['by hand'], { nos });
      return fill(titles.join, { a: lower(a.stretch.piece), b: lower(b.stretch.piece), nos });
    }
  }
}

function openSeam(
  { of, line }: NonNullable<Extract<MakingUpStep, { kind: 'close' }>['seam']>,
  nos: string | undefined,
): string {
  if (of === 'raglan') return fill(titles['one line'], { line, nos });
  return fill(titles['one shoulder'], { side: line.split(' ')[0], nos });
}

function saidOf(phrase: Phrase, terms: Terms, length: SaysLength): string | readonly string[] {
  const [off, offing] = [eitherSide.off[terms], eitherSide.offing[terms]];
  switch (phrase.say) {
    case 'block to':
      return fill(figured['block to'], { width: length(phrase.widthMm), height: length(phrase.heightMm) });
    case 'edges':
      return edges(phrase);
    case 'way':
      return fill(ways[phrase.how], { offing });
    case 'picked up':
      return fill(figured['picked up'], { total: phrase.total });
    case 'ratio':
      return fill(figured.ratio, phrase.ratio);
    case 'a shoulder waits':
      return fill(figured['a shoulder waits'], { side: phrase.worn });
    case 'a line waits':
      return fill(figured['a line waits'], { line: phrase.line });
    case 'first the open shoulder':
    case 'first the open line':
      // it is what the line begins with
      return [];
    case 'ends of the band':
      return fill(figured['ends of the band'], { band: lower(phrase.band), rows: phrase.rows });
    case 'neck':
      return [...phrase.edges.map(neckEdge), fill(figured['in all'], { total: phrase.total })];
    case 'raglan lines':
      return raglanLines[phrase.which];
    case 'underarm':
      return fill(figured[phrase.isOwn ? 'underarm' : 'indent'], { ...phrase.underarm, off });
    case 'marker':
      return fill(figured.marker, { rows: phrase.rows, height: length(phrase.mm) });
    case 'quarters':
      return fill(figured.quarters, { list: phrase.rows.join(' / ') });
    case 'top and armhole': {
      const lengths = { width: length(phrase.topMm), height: length(phrase.armholeMm) };
      return fill(figured[phrase.meet ? 'top and armhole' : 'top eased in'], lengths);
    }
    case 'loop':
      return fill(loops[phrase.of], { rows: phrase.rows });
    case 'lap':
      return fill(laps[phrase.of], { rows: phrase.rows, off });
    case 'buttons below':
      return fill(figured[phrase.count === 1 ? 'a button below' : 'buttons below'], { total: phrase.count });
    case 'holes':
      return fill(figured.holes, { band: lower(phrase.band), list: phrase.stitches.join(' / ') });
    case 'buttons opposite':
      return fill(figured['buttons opposite'], {
        on: phrase.on === undefined ? OTHER_BAND : lower(phrase.on),
      });
    case 'joined':
      return joined(phrase, length);
    default:
      return plain[phrase.say];
  }
}

const lower = (name: string): string => name.toLowerCase();

/** '30 stitches to 30 stitches', '60 rows to 62 rows, one more of the longer edge after every 30' */
function edges({
  unit,
  both: { first, second, oneMoreEvery },
  isFarOff,
}: Extract<Phrase, { say: 'edges' }>): string {
  if (isFarOff) return fill(figured['edges far off'], { first, second, unit });
  return fill(figured.edges, { first, second, unit, every: oneMoreEvery > 0 ? oneMoreEvery : undefined });
}

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along !== 'side of neck' || rows === undefined || ratio === undefined)
    return fill(figured['along an edge'], { stitches, edge: along });
  return fill(figured['along a side'], { stitches, total: ratio.stitches, every: ratio.rows, rows });
}

function joined(
  { unit, edges: [a, b], both, isFarOff }: Extract<Phrase, { say: 'joined' }>,
  length: SaysLength,
): string {
  if (unit === 'mm') return fill(figured.lengths, { width: length(a.mm), height: length(b.mm) });
  return edges({ say: 'edges', unit, both, names: ['', ''], seams: 1, isFarOff });
}
