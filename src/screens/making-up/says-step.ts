import { phrasesOf } from '../../knit/making-up/phrases.ts';
import type { JoinedEdge, MakingUpStep } from '../../knit/making-up/step.ts';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysEdgeOf } from './says-edge.ts';
import { saysPhrase } from './says-phrase.ts';

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
  return { title: saysTitle(step), lines: phrasesOf(step).flatMap(saysPhrase) };
}

function saysTitle(step: MakingUpStep): string {
  switch (step.kind) {
    case 'block':
      return step.makes > 1
        ? say('makingUp.blockMakes', { piece: step.piece, count: step.makes })
        : say('makingUp.block', { piece: step.piece });
    case 'shoulders':
      if (step.seams > 1) return say('makingUp.shoulders');
      return say(shoulderTitles[step.side === 'left' ? 'left' : 'right']);
    case 'pick up':
      return say('makingUp.pickUp', { band: step.band });
    case 'close':
      return saysClosing(step);
    case 'neck edge':
      return say('makingUp.pickUp', { band: say('makingUp.neckband') });
    case 'raglan':
      return step.nos ? say('makingUp.raglan', { piece: step.sleeve }) : say('makingUp.raglanBoth');
    case 'set in sleeves':
      return step.nos ? say('makingUp.sleeves', { piece: step.sleeve }) : say('makingUp.sleevesBoth');
    case 'opening':
      return say(step.of === 'back' ? 'makingUp.opening' : 'makingUp.openingRaglan');
    case 'lap':
      return say(lapTitles[step.of]);
    case 'join':
      return saysJoined(step.edges);
    case 'side seams':
    case 'sleeve seams':
    case 'buttons':
    case 'ends':
      return say(titles[step.kind]);
  }
}

/** With the seam that waited for the band, which is looked for by its name. */
function saysClosing(step: Extract<MakingUpStep, { kind: 'close' }>): string {
  const { band, seam } = step;
  if (!seam) return say('makingUp.close', { band });
  const [shoulder] = phrasesOf(step).flatMap((one) =>
    one.say === 'first the open shoulder' ? [one.worn] : [],
  );
  if (!shoulder) return say('makingUp.closeLine', { band });
  return say('makingUp.closeSeam', { seam: say(shoulderTitles[shoulder]), band });
}

const shoulderTitles = {
  left: 'makingUp.shoulderFirstLeft',
  right: 'makingUp.shoulderFirst',
} as const;

const titles = {
  'side seams': 'makingUp.side',
  'sleeve seams': 'makingUp.sleeveSeams',
  buttons: 'makingUp.buttons',
  ends: 'makingUp.ends',
} as const;

const lapTitles = {
  'left shoulder': 'makingUp.lapShoulder',
  'both shoulders': 'makingUp.lapEnvelope',
  placket: 'makingUp.lapPlacket',
} as const;

function saysJoined([a, b]: Extract<MakingUpStep, { kind: 'join' }>['edges']): string {
  if (!a || !b) return say('makingUp.joinedGoneTitle');
  const name = ({ stretch }: JoinedEdge) =>
    say('makingUp.edgeNamed', { piece: stretch.piece, edge: saysEdgeOf(stretch) });
  return say('makingUp.joinedTitle', { first: name(a), second: name(b) });
}
