import { describe, expect, it } from 'vitest';
import { type ReadPattern, readPattern } from '../../../src/knit/pattern/read-pattern.ts';
import { byTurns } from '../../by-turns.ts';

/**
 * Silence: a sentence of work that is put anywhere into a good text makes rows, changes what is worked, or is told on its own line.
 * The wordings are of no pattern; the places are all lines below which something is worked on the same stitches, and those
 * where nothing is on the needle, of each text.
 */
const texts: Readonly<Record<string, { readonly text: string; readonly worked: readonly number[] }>> = {
  'a back': {
    text: `BACK
Cast on 38 sts.
Work 4 rows in k1, p1 rib.
Work in st st until piece measures 21 cm, ending with a WS row.
Shape armholes: Bind off 3 sts at beg of next 2 rows. 32 sts.
Dec 1 st at each end of next 2 RS rows. 28 sts.
Work 12 rows.
Bind off 4 sts at beg of next 4 rows.
Knit 2 rows.`,
    worked: [2, 3, 4, 5, 6, 7, 8],
  },
  'two sides of a neck': {
    text: `LEFT FRONT
Cast on 36 sts.
Work 10 rows in st st.
Next row: K12, bind off 12 sts, k to end.
Working on last 12 sts only, dec 1 st at neck edge on next 2 RS rows. 10 sts.
Work 3 rows. Bind off.
Rejoin yarn to rem sts.
Work 7 rows. Bind off.`,
    worked: [2, 3, 4, 5, 7],
  },
  'rows with numbers': {
    text: `LEFT FRONT
With A, cast on 22 sts.
Knit 6 rows.
Row 1 (RS): K4, k2tog, yo, k to end.
Row 2: Knit.
Rep rows 1 and 2 three times more.
Bind off 4 sts at beg of next row.
Next row: Knit to last 3 sts, k2tog, k1. 17 sts.
Knit 4 rows.
Bind off.`,
    worked: [2, 3, 5, 6, 7, 8],
  },
};

/** What asks for work, in words that are read and in words that nobody reads. */
const work = `
Knit 3 rows.
Purl 1 row.
Work 3 rows.
Work 5 rows even.
Next row: K9, turn.
1 row purl.
Bind off 3 sts at beg of next 2 rows.
Bind off.
bind off 5 sts at each armhole
Cast them all off.
Cast on 4 sts at end of next row.
Add 5 sts at each end.
Lose 1 st at each edge every 4th row.
Dec 1 st at neck edge.
Decrease 1 st at armhole edge every other row 3 times.
Inc 1 st each side.
Increase 4 sts evenly across next row.
Inc in every 5th st.
K2tog across row.
Take in 2 sts at each side.
Repeat last 2 rows 3 times.
Repeat from * twice.
Repeat once more.
Do this 3 times.
Then the same for the second.
Do the other side in the same way.
Work other shoulder to correspond.
Reverse the shaping for the other side.
Close the sts.
Work to marker.
Work to end.
Work in k2, p2 rib for 4 cm.
Rib 8 rows.
Work 2 in of seed stitch.
Continue for 3 inches.
Switch to your main color.
Change to the contrast colour.
Change to the pocket yarn.
Join B.
With 2 strands of yarn held together, knit 2 rows.
Hold 2 strands together.
Use yarn double.
Use colour B for the next 6 rows.
Alternate colours every 2 rows.
Stripe sequence: 2 rows C, 4 rows D.
Place last 6 sts on a holder.
Slip first 5 sts onto a stitch holder.
Leave these sts.
Put the first 7 sts on a spare needle.
Pick up and knit 12 sts along edge.
Take up the 10 sts.
Keep 4 edge sts in moss stitch.
Make a buttonhole on the next row.
Slip the first st of every row.
End the piece with 4 rows of garter stitch.
Add a border of 6 rows.
Work a purl ridge.
Work short rows.
Join in the round.
Knit every round for 5 cm.
Wrap and turn.
Work the chart for 10 rows.
Change to 5 mm needles.
With RS facing, join yarn and work across.
Shoulder: 5 sts 3 times.
Neck edge: -1 st every 2nd row 4 times.
Every 6th row inc 1 st each end.
At the same time, at neck edge, dec 1 st every 4th row.
When piece measures 27 cm, shape armholes.`
  .trim()
  .split('\n');

/** What is worked, and what is told to be so. */
const plan = ({ pieces, patterns }: ReadPattern): string =>
  JSON.stringify([pieces.map(({ recipe }) => recipe), patterns]);

describe.each(Object.entries(texts))('%s is never silent about', (_, { text, worked }) => {
  const lines = text.split('\n');
  const before = plan(readPattern(text));
  it.each(work.map((sentence, turn) => [sentence, turn] as const))('%s', (sentence, turn) => {
    const silent = byTurns(worked, turn).filter((at) => {
      const read = readPattern([...lines.slice(0, at), sentence, ...lines.slice(at)].join('\n'));
      const own = read.lines.find(({ line }) => line === at + 1);
      return own?.faults.length === 0 && own.rows.length === 0 && plan(read) === before;
    });
    expect(silent).toEqual([]);
  });
});

describe('where all is bound off', () => {
  it.each([
    'Work a purl ridge.',
    'Knit a garter ridge.',
    'Cast them all off.',
    'Add a border of 6 rows.',
    'Knit 3 rows.',
    'Dec 1 st at each end of next row.',
  ])('%s is told', (sentence) => {
    const { lines } = readPattern(`BACK\nCast on 20 sts.\nKnit 4 rows.\nBind off.\n${sentence}`);
    expect(lines[4]?.faults).not.toEqual([]);
  });
  it.each(['Knit Cap', 'Work the Main Part', 'Finishing', 'Pick up edging', 'Sew the seams.'])(
    '%s is none',
    (title) => {
      const { lines } = readPattern(
        `BACK\nCast on 20 sts.\nKnit 4 rows.\nBind off.\n${title}\nCast on 8 sts.\nKnit 4 rows.`,
      );
      expect(lines[4]?.faults).toEqual([]);
    },
  );
});
