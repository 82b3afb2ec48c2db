import type { PickUpRatio } from '../../knit/making-up/pick-up.ts';
import {
  type BandEdge,
  type Ease,
  easeOf,
  type JoinedEdge,
  type MakingUpStep,
  type UnderarmSeam,
} from '../../knit/making-up/step.ts';
import { saysLength } from '../../words/measures.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysEdgeOf } from './says-edge.ts';

type Of<K extends MakingUpStep['kind']> = Extract<MakingUpStep, { kind: K }>;

/** A step's heading and the sentences below it. */
export interface SaidStep {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Why it is done, and done now; common practice, no published source. */
const reasons = {
  block: 'makingUp.whyBlock',
  raglan: 'makingUp.whySleeves',
  'set in sleeves': 'makingUp.whySleeves',
  'side seams': 'makingUp.whySide',
  ends: 'makingUp.whyEnds',
} as const satisfies Partial<Record<MakingUpStep['kind'], string>>;

export const saysReason = ({ kind }: MakingUpStep): string | undefined =>
  kind in reasons ? say(reasons[kind as keyof typeof reasons]) : undefined;

export function saysStep(step: MakingUpStep): SaidStep {
  const { title, lines } = saysFor(step);
  const { nos, worn } = step;
  if (worn) return { title: say(wornTitles[worn], { step: title }), lines };
  return nos
    ? { title: say('makingUp.nos', { step: title, list: saysList(nos.map(String)) }), lines }
    : { title, lines };
}

const wornTitles = { left: 'makingUp.wornLeft', right: 'makingUp.wornRight' } as const;

function saysFor(step: MakingUpStep): SaidStep {
  switch (step.kind) {
    case 'block':
      return saysBlock(step);
    case 'shoulders':
      return saysShoulderSeams(step);
    case 'pick up':
      return saysPickUp(step);
    case 'close':
      return saysClose(step);
    case 'raglan':
      return saysRaglan(step);
    case 'neck edge':
      return saysNeck(step);
    case 'set in sleeves':
      return saysSleeves(step);
    case 'side seams':
      return {
        title: say('makingUp.side'),
        lines: [saysSeam(step.rows, step.back, step.front), say('makingUp.seamTakes')],
      };
    case 'sleeve seams':
      return {
        title: say('makingUp.sleeveSeams'),
        lines: [say('makingUp.seamEqual', { count: step.rows }), say('makingUp.seamTakes')],
      };
    case 'opening':
      return {
        title: say(step.of === 'back' ? 'makingUp.opening' : 'makingUp.openingRaglan'),
        lines: [say('makingUp.openingLoop', { count: step.rows }), say('makingUp.openingTry')],
      };
    case 'join':
      return saysJoin(step);
    case 'buttons':
      return saysButtons(step);
    case 'lap':
      if (step.of === 'placket')
        return {
          title: say('makingUp.lapPlacket'),
          lines: [say('makingUp.lapPlacketSewn', { count: step.rows }), say('makingUp.openingTry')],
        };
      return step.of === 'left shoulder'
        ? {
            title: say('makingUp.lapShoulder'),
            lines: [
              say('makingUp.lapOnBack', { count: step.rows }),
              say('makingUp.lapButtons', { count: step.buttons ?? 1 }),
              say('makingUp.openingTry'),
            ],
          }
        : {
            title: say('makingUp.lapEnvelope'),
            lines: [say('makingUp.lapBands', { count: step.rows }), say('makingUp.lapTry')],
          };
    case 'ends':
      return { title: say('makingUp.ends'), lines: [say('makingUp.endsHelp')] };
  }
}

function saysButtons({ band, stitches, on }: Of<'buttons'>): SaidStep {
  const list = saysList(stitches.map(String));
  const where = on === undefined ? say('makingUp.buttonsOther') : say('makingUp.buttonsOn', { band: on });
  return {
    title: say('makingUp.buttons'),
    lines: [say('makingUp.buttonsAt', { count: stitches.length, band, list }), where],
  };
}

function saysBlock({ piece, makes, widthMm, heightMm }: Of<'block'>): SaidStep {
  const title =
    makes > 1 ? say('makingUp.blockMakes', { piece, count: makes }) : say('makingUp.block', { piece });
  return {
    title,
    lines: [say('makingUp.blockTo', { width: saysLength(widthMm), height: saysLength(heightMm) })],
  };
}

/** One more after every second or third stitch is no easing any more; common practice, no published source. */
const LEAST_EVERY = 3;

const isFarOff = ({ oneMoreEvery }: Ease): boolean => oneMoreEvery > 0 && oneMoreEvery < LEAST_EVERY;

const saysFarOff = ({ first, second }: Ease): string => say('makingUp.doNotMatch', { first, second });

const saysShoulders = (ease: Ease): string => {
  const { first, second, oneMoreEvery } = ease;
  if (isFarOff(ease)) return saysFarOff(ease);
  return oneMoreEvery === 0
    ? say('makingUp.shouldersEqual', { count: first })
    : say('makingUp.shouldersEased', { back: first, front: second, every: oneMoreEvery });
};

const saysSeam = (ease: Ease, a: string, b: string): string => {
  const { first, second, oneMoreEvery } = ease;
  if (isFarOff(ease)) return saysFarOff(ease);
  return oneMoreEvery === 0
    ? say('makingUp.seamEqual', { count: first })
    : say('makingUp.seamEased', { first, second, a, b, every: oneMoreEvery });
};

/** What is said of a way to close a shoulder that is no seam. */
const ways = {
  sewn: undefined,
  mattress: undefined,
  'three-needle': 'makingUp.threeNeedle',
  grafted: 'makingUp.grafted',
} as const;

function saysShoulderSeams({ stitches, seams, how, isOtherButtoned }: Of<'shoulders'>): SaidStep {
  const key = how && ways[how];
  const way = key ? [say(key)] : [];
  if (seams > 1) return { title: say('makingUp.shoulders'), lines: [saysShoulders(stitches), ...way] };
  const lines = [
    saysShoulder(stitches),
    ...way,
    say(isOtherButtoned ? 'makingUp.shoulderButtoned' : 'makingUp.shoulderLater'),
  ];
  return { title: say('makingUp.shoulderFirst'), lines };
}

/** One shoulder. */
const saysShoulder = ({ first, second, oneMoreEvery }: Ease): string =>
  oneMoreEvery === 0
    ? say('makingUp.shoulderEqual', { count: first })
    : say('makingUp.shouldersEased', { back: first, front: second, every: oneMoreEvery });

function saysClose({ band, rows, seam }: Of<'close'>): SaidStep {
  const lines: string[] = [];
  if (seam?.of === 'shoulder') {
    const way = seam.how && ways[seam.how];
    lines.push(say('makingUp.closeShoulder'), saysShoulder(seam.both), ...(way ? [say(way)] : []));
  }
  if (seam?.of === 'raglan') lines.push(say('makingUp.closeRaglan'), saysLine(seam.both));
  lines.push(say('makingUp.closeEnds', { band, count: rows }));
  return { title: say('makingUp.close', { band }), lines };
}

function saysRaglan({ sleeve, seams, rows, asFarAsOpening, underarm, nos }: Of<'raglan'>): SaidStep {
  const which = say(seams % 4 === 0 ? 'makingUp.raglanFour' : 'makingUp.raglanThree');
  const title = nos ? say('makingUp.raglan', { piece: sleeve }) : say('makingUp.raglanBoth');
  if (asFarAsOpening === undefined)
    return { title, lines: [which, saysLine(rows), ...saysUnderarm(underarm)] };
  const lines = [say('makingUp.raglanOthers'), saysLine(rows), say('makingUp.raglanOpening')];
  return { title, lines: [...lines, saysLine(asFarAsOpening), ...saysUnderarm(underarm)] };
}

/** A raglan line, by its rows. */
const saysLine = ({ first, second, oneMoreEvery }: Ease): string =>
  oneMoreEvery === 0
    ? say('makingUp.seamEqual', { count: first })
    : say('makingUp.raglanEased', { first, second, every: oneMoreEvery });

function saysUnderarm({ stitches, rows }: UnderarmSeam): string[] {
  if (stitches === 0) return [];
  return [
    rows > 0
      ? say('makingUp.sleevesNotch', { count: stitches, rows })
      : say('makingUp.sleevesUnderarm', { count: stitches }),
  ];
}

const saysRatio = ({ stitches, rows }: PickUpRatio): string =>
  say('makingUp.pickUpRatio', { stitches, rows });

function saysPickUp({ band, edges, ratio, total }: Of<'pick up'>): SaidStep {
  const lines = edges.map(({ along, stitches }) => say('makingUp.pickUpAlong', { along, stitches }));
  lines.push(say('makingUp.pickUpTotal', { total }));
  if (ratio.stitches !== ratio.rows) lines.push(say('makingUp.pickUpRows', { ratio: saysRatio(ratio) }));
  return { title: say('makingUp.pickUp', { band }), lines };
}

const saysNeck = ({ edges, total }: Of<'neck edge'>): SaidStep => ({
  title: say('makingUp.pickUp', { band: say('makingUp.neckband') }),
  lines: [...edges.map(saysEdge), say('makingUp.neckTotal', { total }), say('makingUp.shouldersOrder')],
});

function saysEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along === 'back neck') return say('makingUp.pickUpBack', { stitches });
  if (along === 'front neck' || rows === undefined || ratio === undefined)
    return say('makingUp.pickUpFront', { stitches });
  return say('makingUp.pickUpSide', { stitches, rows, ratio: saysRatio(ratio) });
}

/** What she joined herself. */
function saysJoin({ edges: [a, b], how, unit }: Of<'join'>): SaidStep {
  if (!a || !b) return { title: say('makingUp.joinedGoneTitle'), lines: [say('makingUp.joinedGone')] };
  const name = ({ stretch }: JoinedEdge) =>
    say('makingUp.edgeNamed', { piece: stretch.piece, edge: saysEdgeOf(stretch) });
  const ease = easeOf(a.count, b.count);
  const [first, second] = unit === 'mm' ? [saysLength(a.mm), saysLength(b.mm)] : [a.count, b.count];
  const lines = [say(bothEdges[unit], { first, second })];
  if (unit !== 'mm' && isFarOff(ease)) lines.push(saysFarOff(ease));
  else if (ease.oneMoreEvery > 0) lines.push(say('makingUp.joinedEased', { every: ease.oneMoreEvery }));
  else if (unit === 'mm' && Math.abs(a.mm - b.mm) > MEETS_MM) lines.push(say('makingUp.joinedEven'));
  lines.push(say(joinedBy[how]));
  return { title: say('makingUp.joinedTitle', { first: name(a), second: name(b) }), lines };
}

const bothEdges = {
  rows: 'makingUp.joinedRows',
  stitches: 'makingUp.joinedStitches',
  mm: 'makingUp.joinedLengths',
} as const;

const joinedBy = {
  mattress: 'makingUp.byMattress',
  'three-needle': 'makingUp.threeNeedle',
  grafted: 'makingUp.grafted',
  sewn: 'makingUp.bySewn',
} as const;

/** Top and armhole closer than this meet as they are, mm. */
const MEETS_MM = 15;

function saysSleeves(step: Of<'set in sleeves'>): SaidStep {
  const { sleeve, topMm, armholeMm, markerRows, markerMm, quarters, underarm } = step;
  const fit = { top: saysLength(topMm), armhole: saysLength(armholeMm) };
  // where stitches are bound off at the underarm their corner is the mark
  const marker = say('makingUp.sleevesMarker', { rows: markerRows, length: saysLength(markerMm) });
  const lines = underarm.stitches > 0 ? [] : [marker];
  lines.push(say('makingUp.sleevesTop'));
  lines.push(say('makingUp.sleevesQuarters', { rows: saysList(quarters.map(String)) }));
  lines.push(...saysUnderarm(underarm));
  lines.push(
    say(Math.abs(topMm - armholeMm) <= MEETS_MM ? 'makingUp.sleevesFit' : 'makingUp.sleevesEase', fit),
  );
  return {
    title: step.nos ? say('makingUp.sleeves', { piece: sleeve }) : say('makingUp.sleevesBoth'),
    lines,
  };
}
