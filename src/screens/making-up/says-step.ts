import type { BandEdge, Ease, MakingUpStep } from '../../knit/making-up/making-up.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

type Of<K extends MakingUpStep['kind']> = Extract<MakingUpStep, { kind: K }>;

/** A step's heading and the sentences below it. */
export interface SaidStep {
  readonly title: string;
  readonly lines: readonly string[];
}

export function saysStep(step: MakingUpStep): SaidStep {
  switch (step.kind) {
    case 'block':
      return saysBlock(step);
    case 'shoulders':
      return { title: say('makingUp.shoulders'), lines: [saysShoulders(step.stitches), say('makingUp.shouldersOrder')] };
    case 'pick up':
      return saysPickUp(step);
    case 'set in sleeves':
      return saysSleeves(step);
    case 'side seams':
      return { title: say('makingUp.side'), lines: [saysSeam(step.rows, step.back, step.front)] };
    case 'sleeve seams':
      return { title: say('makingUp.sleeveSeams'), lines: [say('makingUp.seamEqual', { count: step.rows })] };
    case 'ends':
      return { title: say('makingUp.ends'), lines: [say('makingUp.endsHelp')] };
  }
}

function saysBlock({ piece, makes, widthMm, heightMm }: Of<'block'>): SaidStep {
  const title = makes > 1 ? say('makingUp.blockMakes', { piece, count: makes }) : say('makingUp.block', { piece });
  return { title, lines: [say('makingUp.blockTo', { width: saysLength(widthMm), height: saysLength(heightMm) })] };
}

const saysShoulders = ({ first, second, oneMoreEvery }: Ease): string =>
  oneMoreEvery === 0
    ? say('makingUp.shouldersEqual', { count: first })
    : say('makingUp.shouldersEased', { back: first, front: second, every: oneMoreEvery });

const saysSeam = ({ first, second, oneMoreEvery }: Ease, a: string, b: string): string =>
  oneMoreEvery === 0
    ? say('makingUp.seamEqual', { count: first })
    : say('makingUp.seamEased', { first, second, a, b, every: oneMoreEvery });

function saysPickUp({ band, edges, total, planned }: Of<'pick up'>): SaidStep {
  const lines = edges.map(saysEdge);
  lines.push(say('makingUp.pickUpTotal', { total }));
  if (planned !== undefined && planned !== total) lines.push(say('makingUp.pickUpPlanned', { planned }));
  return { title: say('makingUp.pickUp', { band: band ?? say('makingUp.neckband') }), lines };
}

function saysEdge({ along, times, rows, ratio, stitches }: BandEdge): string {
  if (along === 'back neck') return say('makingUp.pickUpBack', { stitches });
  if (along === 'front neck' || rows === undefined || ratio === undefined) return say('makingUp.pickUpFront', { stitches });
  const figures = { stitches, rows, ratio: say('makingUp.pickUpRatio', { stitches: ratio.stitches, rows: ratio.rows }) };
  return times > 1 ? say('makingUp.pickUpSide', figures) : say('makingUp.pickUpSideOnce', figures);
}

/** Top and armhole closer than this meet as they are, mm. */
const MEETS_MM = 15;

function saysSleeves(step: Of<'set in sleeves'>): SaidStep {
  const { sleeve, topMm, armholeMm, markerRows, quarters, underarm } = step;
  const fit = { top: saysLength(topMm), armhole: saysLength(armholeMm) };
  const lines = [say('makingUp.sleevesMarker', { rows: markerRows, length: saysLength(armholeMm / 2) })];
  lines.push(say('makingUp.sleevesQuarters', { rows: saysList(quarters.map(String)) }));
  if (underarm > 0) lines.push(say('makingUp.sleevesUnderarm', { count: underarm }));
  lines.push(say(Math.abs(topMm - armholeMm) <= MEETS_MM ? 'makingUp.sleevesFit' : 'makingUp.sleevesEase', fit));
  return { title: say('makingUp.sleeves', { piece: sleeve }), lines };
}
