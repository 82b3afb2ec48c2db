import type { Side } from '../../knit/row/step.ts';
import type { CableName, Crossing, Gloss, Glossary } from '../gloss.ts';

const incInto = (times: string): string =>
  `Work ${times} times into the same stitch before letting it off the left needle, knitting it in front and behind in turn.`;

/** What each stitch is and how it is made, in our own words. */
export const glossary: Glossary = {
  k: {
    name: 'knit',
    how: 'Yarn behind. Right needle into the loop from the front; draw the yarn through; let the old loop go.',
  },
  p: {
    name: 'purl',
    how: 'Yarn in front. Right needle into the loop from behind, towards you; draw the yarn through; let the old loop go.',
  },
  sl: {
    name: 'slip',
    how: 'Pass the loop to the right needle without working it, tip to tip, so that it does not turn.',
  },
  'sl wyif': {
    name: 'slip with the yarn in front',
    how: 'Bring the yarn to your side, pass the loop over unworked; the yarn lies across it on your side.',
  },
  'sl wyib': {
    name: 'slip with the yarn behind',
    how: 'Keep the yarn on the far side and pass the loop over unworked.',
  },
  'k tbl': {
    name: 'knit through the back loop',
    how: 'Knit into the leg of the loop that lies behind the needle; the stitch is twisted.',
  },
  'p tbl': {
    name: 'purl through the back loop',
    how: 'From behind, put the needle into the back leg and purl it; the stitch is twisted.',
  },
  'k1 below': {
    name: 'knit 1 in the row below',
    how: 'Knit into the stitch that lies just under the next one on the needle; the upper loop comes off with it.',
  },
  'p1 below': {
    name: 'purl 1 in the row below',
    how: 'Purl into the stitch that lies just under the next one on the needle; the upper loop comes off with it.',
  },
  patt: {
    name: 'work in pattern',
    how: 'Go on as the stitches below show: whatever the pattern has there in this row.',
  },
  unworked: {
    name: 'turn',
    how: 'Turn the work here and leave the stitches behind you as they are. Slip the first stitch of the way back, or work it double, in the same way at every turn; the row that goes over the turns later works each gap together, so that no hole is left.',
  },
  'join yarn': {
    name: 'join the yarn',
    how: 'The yarn hangs somewhere else: cut it, or take another ball, and begin here. Leave an end of about 15\u00a0cm.',
  },
  'wrap next st': {
    name: 'wrap the next stitch',
    how: 'Pass the next stitch over unworked, lay the yarn round its foot to the other side of the work, and put the stitch back; then turn. The wrap keeps a hole from opening at the turn.',
  },
  'picking up each wrap': {
    name: 'pick up each wrap',
    how: 'Where a stitch has a wrap round its foot, lift the wrap onto the left needle and work it together with its stitch. In garter stitch it may stay where it is: it does not show.',
  },
  ds: {
    name: 'double stitch',
    how: 'Yarn in front, slip the first stitch; pull the yarn up over the needle to the back until both legs of the stitch lie on it. It counts as one stitch.',
  },
  'working each ds as one st': {
    name: 'work each double stitch as one',
    how: 'Put the needle through both legs of a double stitch and work them together, as the one stitch that they are.',
  },
  mb: {
    name: 'make a bobble',
    how: 'Work several stitches into one, turn to and fro over them as the pattern says, then draw them together into one again.',
  },
  k2tog: {
    name: 'knit 2 together',
    how: 'Put the needle through the next two loops at once, as if they were one, and knit them. One stitch fewer; it leans to the right.',
  },
  p2tog: {
    name: 'purl 2 together',
    how: 'Purl the next two loops as if they were one. One stitch fewer; seen from the other side it leans to the right.',
  },
  ssk: {
    name: 'slip, slip, knit',
    how: 'Slip two stitches, one by one, as if to knit. Put the left needle into their fronts and knit both together. One stitch fewer; it leans to the left.',
  },
  ssp: {
    name: 'slip, slip, purl',
    how: 'Slip two stitches, one by one, as if to knit. Give them back to the left needle and purl both together through their back legs. One stitch fewer.',
  },
  skp: {
    name: 'slip, knit, pass over',
    how: 'Slip one as if to knit, knit the next, then lift the slipped loop over it. One stitch fewer; it leans to the left.',
  },
  spp: {
    name: 'slip, purl, pass over',
    how: 'Slip one, purl the next, then lift the slipped loop over it. One stitch fewer.',
  },
  sp2p: {
    name: 'slip, purl 2 together, pass over',
    how: 'Slip one, purl the next two together, then lift the slipped loop over. Two stitches fewer.',
  },
  'k2tog tbl': {
    name: 'knit 2 together through the back loops',
    how: 'Knit the next two loops together through the legs behind the needle. One stitch fewer; it leans to the left.',
  },
  'p2tog tbl': {
    name: 'purl 2 together through the back loops',
    how: 'From behind, into the back leg of the second loop and then of the first, and purl both together. One stitch fewer.',
  },
  k3tog: {
    name: 'knit 3 together',
    how: 'Knit three loops as if they were one. Two stitches fewer; they lean to the right.',
  },
  p3tog: { name: 'purl 3 together', how: 'Purl three loops as if they were one. Two stitches fewer.' },
  'k3tog tbl': {
    name: 'knit 3 together through the back loops',
    how: 'Knit three loops together through their back legs. Two stitches fewer; they lean to the left.',
  },
  'p3tog tbl': {
    name: 'purl 3 together through the back loops',
    how: 'Purl three loops together through their back legs, coming from behind. Two stitches fewer.',
  },
  sssk: {
    name: 'slip, slip, slip, knit',
    how: 'Slip three, one by one, as if to knit; put the left needle into their fronts and knit all three together. Two stitches fewer; they lean to the left.',
  },
  sssp: {
    name: 'slip, slip, slip, purl',
    how: 'Slip three, one by one, as if to knit; give them back and purl all three together through their back legs. Two stitches fewer.',
  },
  sk2p: {
    name: 'slip, knit 2 together, pass over',
    how: 'Slip one as if to knit, knit the next two together, lift the slipped loop over. Two stitches fewer; they lean to the left.',
  },
  s2kp: {
    name: 'slip 2, knit, pass both over',
    how: 'Slip two at once as if to knit them together, knit the next, lift both over. Two stitches fewer; the middle one stands upright on top.',
  },
  s2pp: {
    name: 'slip 2, purl, pass both over',
    how: 'Put the needle from behind into the second stitch and then into the first, through their back legs, and slip both at once; purl the next, lift both over. Two stitches fewer; on the other side the middle one stands upright on top.',
  },
  'sl1 k2 psso': {
    name: 'slip 1, knit 2, pass over both',
    how: 'Slip one, knit two, then lift the slipped loop over both. One stitch fewer.',
  },
  k4tog: { name: 'knit 4 together', how: 'Knit four loops as if they were one. Three stitches fewer.' },
  p4tog: { name: 'purl 4 together', how: 'Purl four loops as if they were one. Three stitches fewer.' },
  k5tog: { name: 'knit 5 together', how: 'Knit five loops as if they were one. Four stitches fewer.' },
  p5tog: { name: 'purl 5 together', how: 'Purl five loops as if they were one. Four stitches fewer.' },
  drop: { name: 'drop', how: 'Let the loop off the needle without working it.' },
  dec: {
    name: 'decrease 1',
    how: 'Make two stitches into one in the way you like best at this place; knitting two together will do.',
  },
  'dec 2': {
    name: 'decrease 2',
    how: 'Make three stitches into one in the way you like best at this place.',
  },
  'dec 3': { name: 'decrease 3', how: 'Make four stitches into one in the way you like best at this place.' },
  'dec 4': { name: 'decrease 4', how: 'Make five stitches into one in the way you like best at this place.' },
  m1: {
    name: 'make 1',
    how: 'Lift the strand that runs between the two needles and knit into it so that it twists, leaning either way. One stitch more.',
  },
  m1l: {
    name: 'make 1, leaning left',
    how: 'Lift the strand between the needles with the left needle from the front; knit into its back leg. One stitch more.',
  },
  m1r: {
    name: 'make 1, leaning right',
    how: 'Lift the strand between the needles with the left needle from behind; knit into its front leg. One stitch more.',
  },
  m1p: {
    name: 'make 1 purlwise',
    how: 'Lift the strand between the needles from the front and purl into its back leg. One stitch more.',
  },
  yo: {
    name: 'yarn over',
    how: 'Lay the yarn over the right needle, from front to back, before the next stitch. One stitch more, with a hole under it.',
  },
  'yo twice': {
    name: 'yarn over twice',
    how: 'Wind the yarn round the right needle two times before the next stitch. Two stitches more, with a large hole.',
  },
  kfb: {
    name: 'knit front and back',
    how: 'Knit a stitch and leave it on the left needle; knit it once more through its back leg; let it go. One stitch more, with a small bar.',
  },
  pfb: {
    name: 'purl front and back',
    how: 'Purl a stitch and leave it on the left needle; purl it once more through its back leg; let it go. One stitch more.',
  },
  kfbf: {
    name: 'knit front, back and front',
    how: 'Knit a stitch in front, behind and in front again before letting it go. Two stitches more.',
  },
  'k1 p1': {
    name: 'knit and purl into one',
    how: 'Knit a stitch, keep it on the left needle, bring the yarn forward and purl it too. One stitch more.',
  },
  'k1 p1 k1': {
    name: 'knit, purl, knit into one',
    how: 'Knit, purl and knit into the same stitch before letting it go. Two stitches more.',
  },
  'p1 k1 p1': {
    name: 'purl, knit, purl into one',
    how: 'Purl, knit and purl into the same stitch before letting it go. Two stitches more.',
  },
  'k1 p1 k1 p1': {
    name: 'knit and purl twice into one',
    how: 'Knit, purl, knit and purl into the same stitch before letting it go. Three stitches more.',
  },
  'k1 p1 k1 p1 k1': {
    name: 'five into one',
    how: 'Knit, purl, knit, purl and knit into the same stitch before letting it go. Four stitches more.',
  },
  'k1 yo k1': {
    name: 'knit, yarn over, knit into one',
    how: 'Knit a stitch, keep it, lay the yarn over, knit it again. Two stitches more.',
  },
  'k1 yo k1 yo k1': {
    name: 'five into one, with yarn overs',
    how: 'Knit into a stitch three times with a yarn over between, before letting it go. Four stitches more.',
  },
  inc: {
    name: 'increase 1',
    how: 'Make one stitch more in the way you like best at this place; knitting into front and back will do.',
  },
  'inc 2': { name: 'increase 2', how: incInto('three') },
  'inc 3': { name: 'increase 3', how: incInto('four') },
  'inc 4': { name: 'increase 4', how: incInto('five') },
  bo: {
    name: '[bind off]',
    how: 'Work two stitches, lift the first over the second; work one more, lift over again. It takes one stitch more than are [bound off]; that one stays on the right needle and counts as the first of those that come next.',
  },
  co: {
    name: 'cast on',
    how: 'Make new loops on the needle in work, twisted round it or knitted from the last one, at the beginning or the end of the row.',
  },
  pu: {
    name: 'pick up and knit',
    how: 'Right side facing: put the needle through the edge, draw the yarn through, keep the loop. Go evenly along the edge.',
  },
  hold: {
    name: 'place on a holder',
    how: 'Slip the stitches onto a thread or a holder without working them; they rest there until they are needed.',
  },
  take: {
    name: 'take up from the holder',
    how: 'Put the resting stitches back onto a needle, none of them turned, and join the yarn.',
  },
};

/** Which face of the fabric lies before her. */
export const sides: Readonly<Record<Side, Gloss>> = {
  RS: {
    name: 'right side',
    how: 'The face of the fabric, seen when the garment is worn, is turned towards you.',
  },
  WS: {
    name: 'wrong side',
    how: 'The back of the fabric, inside when the garment is worn, is turned towards you.',
  },
};

const sts = (n: number): string => (n === 1 ? '1 stitch' : `${n} stitches`);

export function crossing(name: CableName, { leans, over, under, purled, open }: Crossing): Gloss {
  const called = `${over + under} stitches crossed to the ${leans}`;
  if (name === 'rt')
    return {
      name: called,
      how: 'Knit two together but keep them on the left needle; knit the first of them once more; let both go.',
    };
  if (name === 'lt')
    return {
      name: called,
      how: 'Knit the second stitch through its back leg from behind, keep it, knit the first; let both go.',
    };
  const behind = purled ? 'purl' : 'knit';
  const how =
    leans === 'left'
      ? `Put ${sts(over)} on a cable needle in front of the work; ${behind} ${under}; knit the ${over} from the cable needle.`
      : `Put ${sts(under)} on a cable needle behind the work; knit ${over}; ${behind} the ${under} from the cable needle.`;
  return {
    name: called,
    how: open ? `${how} Patterns share an odd number in more than one way; look how yours does.` : how,
  };
}
