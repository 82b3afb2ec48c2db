import type { Phrase, plainPhrases } from '../../knit/making-up/phrases.ts';
import type { PickUpRatio } from '../../knit/making-up/pick-up.ts';
import type { BandEdge } from '../../knit/making-up/step.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

type Of<K extends Phrase['say']> = Extract<Phrase, { say: K }>;

/** A phrase of a step in sentences. */
export function saysPhrase(phrase: Phrase): string | readonly string[] {
  switch (phrase.say) {
    case 'block to':
      return say('makingUp.blockTo', {
        width: saysLength(phrase.widthMm),
        height: saysLength(phrase.heightMm),
      });
    case 'edges':
      return saysEdges(phrase);
    case 'way':
      return say(ways[phrase.how]);
    case 'picked up':
      return [
        ...phrase.edges.map(({ along, stitches }) => say('makingUp.pickUpAlong', { along, stitches })),
        say('makingUp.pickUpTotal', { total: phrase.total }),
      ];
    case 'ratio':
      return say('makingUp.pickUpRows', { ratio: saysRatio(phrase.ratio) });
    case 'share':
      return say('makingUp.pickUpShare', { percent: phrase.percent });
    case 'a shoulder waits':
      return say(laterShoulders[phrase.worn]);
    case 'a line waits':
      return say('makingUp.raglanLater', { line: say(lines[phrase.line]) });
    case 'first the open shoulder':
      return say(openShoulders[phrase.worn]);
    case 'first the open line':
      return say('makingUp.closeRaglan', { line: say(lines[phrase.line]) });
    case 'ends of the band':
      return say('makingUp.closeEnds', { band: phrase.band, count: phrase.rows });
    case 'neck':
      return [...phrase.edges.map(saysNeckEdge), say('makingUp.neckTotal', { total: phrase.total })];
    case 'raglan lines':
      return say(raglanLines[phrase.which]);
    case 'underarm':
      return phrase.isOwn
        ? say('makingUp.sleevesUnderarm', { count: phrase.underarm.stitches })
        : say('makingUp.sleevesNotch', { count: phrase.underarm.stitches, rows: phrase.underarm.rows });
    case 'marker':
      return say('makingUp.sleevesMarker', { rows: phrase.rows, length: saysLength(phrase.mm) });
    case 'quarters':
      return say('makingUp.sleevesQuarters', { rows: saysList(phrase.rows.map(String)) });
    case 'top and armhole':
      return say(phrase.meet ? 'makingUp.sleevesFit' : 'makingUp.sleevesEase', {
        top: saysLength(phrase.topMm),
        armhole: saysLength(phrase.armholeMm),
      });
    case 'loop':
      return say(phrase.of === 'back' ? 'makingUp.openingLoop' : 'makingUp.openingLoopRaglan', {
        count: phrase.rows,
      });
    case 'lap':
      return say(laps[phrase.of], { count: phrase.rows });
    case 'buttons below':
      return say('makingUp.lapButtons', { count: phrase.count });
    case 'holes': {
      const list = saysList(phrase.stitches.map(String));
      return say('makingUp.buttonsAt', { count: phrase.stitches.length, band: phrase.band, list });
    }
    case 'buttons opposite':
      return phrase.on === undefined
        ? say('makingUp.buttonsOther')
        : say('makingUp.buttonsOn', { band: phrase.on });
    case 'joined':
      return saysJoined(phrase);
    default:
      return say(plain[phrase.say]);
  }
}

const plain = {
  'one stitch in': 'makingUp.seamTakes',
  'the left shoulder is buttoned': 'makingUp.shoulderButtoned',
  'one shoulder waits': 'makingUp.shouldersOrder',
  'the left back line to its opening': 'makingUp.raglanOpening',
  'middle of the top': 'makingUp.sleevesTop',
  'over the head': 'makingUp.openingTry',
  'before the sleeves': 'makingUp.lapTry',
  'joined evenly': 'makingUp.joinedEven',
  'an edge is gone': 'makingUp.joinedGone',
  'along the seams': 'makingUp.endsHelp',
} as const satisfies Readonly<Record<(typeof plainPhrases)[number], string>>;

const ways = {
  mattress: 'makingUp.byMattress',
  'three-needle': 'makingUp.threeNeedle',
  grafted: 'makingUp.grafted',
  sewn: 'makingUp.bySewn',
} as const;

const laterShoulders = {
  left: 'makingUp.shoulderLater',
  right: 'makingUp.shoulderLaterRight',
} as const;

const openShoulders = {
  left: 'makingUp.closeShoulder',
  right: 'makingUp.closeShoulderRight',
} as const;

const lines = {
  'left back': 'makingUp.lineLeftBack',
  'left front': 'makingUp.lineLeftFront',
  'right front': 'makingUp.lineRightFront',
  'right back': 'makingUp.lineRightBack',
} as const;

const raglanLines = {
  four: 'makingUp.raglanFour',
  three: 'makingUp.raglanThree',
  'one has an opening': 'makingUp.raglanOthers',
  'of one sleeve': 'makingUp.raglanOwn',
} as const;

const laps = {
  'left shoulder': 'makingUp.lapOnBack',
  'both shoulders': 'makingUp.lapBands',
  placket: 'makingUp.lapPlacketSewn',
} as const;

function saysEdges({ unit, both, names: [a, b], seams, isFarOff }: Of<'edges'>): string {
  const { first, second, oneMoreEvery: every } = both;
  if (isFarOff) return say('makingUp.doNotMatch', { first, second });
  if (unit === 'rows') {
    if (every === 0) return say('makingUp.seamEqual', { count: first });
    return b === ''
      ? say('makingUp.raglanEased', { first, second, every })
      : say('makingUp.seamEased', { first, second, a, b, every });
  }
  if (every > 0) return say('makingUp.shouldersEased', { back: first, front: second, every });
  return say(seams > 1 ? 'makingUp.shouldersEqual' : 'makingUp.shoulderEqual', { count: first });
}

const saysRatio = ({ stitches, rows }: PickUpRatio): string =>
  say('makingUp.pickUpRatio', { stitches, rows });

function saysNeckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along === 'back neck') return say('makingUp.pickUpBack', { stitches });
  if (along === 'front neck' || rows === undefined || ratio === undefined)
    return say('makingUp.pickUpFront', { stitches });
  return say('makingUp.pickUpSide', { stitches, rows, ratio: saysRatio(ratio) });
}

function saysJoined({ unit, edges: [a, b], both, isFarOff }: Of<'joined'>): readonly string[] {
  const [first, second] = unit === 'mm' ? [saysLength(a.mm), saysLength(b.mm)] : [a.count, b.count];
  const told = say(bothEdges[unit], { first, second });
  if (isFarOff) return [told, say('makingUp.doNotMatch', { first: both.first, second: both.second })];
  return both.oneMoreEvery > 0 ? [told, say('makingUp.joinedEased', { every: both.oneMoreEvery })] : [told];
}

const bothEdges = {
  rows: 'makingUp.joinedRows',
  stitches: 'makingUp.joinedStitches',
  mm: 'makingUp.joinedLengths',
} as const;
