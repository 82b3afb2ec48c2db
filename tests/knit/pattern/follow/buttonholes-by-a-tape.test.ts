import { describe, it } from 'vitest';
import { expectCounts } from './by-counts.ts';

const front = 'RIGHT FRONT\nCast on 31 sts.';

/** Common practice, no published source; rows reckoned by hand, 4 rows being a centimetre where a gauge is told. */
describe('buttonholes at measured intervals,', () => {
  it.each([
    {
      title: 'without a gauge she measures for them, on whatever rows they are said of',
      texts: [
        'Knit 10 rows, making buttonholes every 4 cm.',
        'Knit 10 rows, making a buttonhole after the 1st inch and every 3 inches thereafter until 4 buttonholes are made.',
        'Knit 10 rows, making a buttonhole when piece measures 1 cm and, measuring from 1st row of last buttonhole, every 3 cm thereafter until 3 in all are made.',
        'Work 10 rows in garter st, making buttonholes 5 cm apart.',
      ],
      reading: '10 rows (own 10)',
    },
    {
      title: 'said by themselves they are of the rows that come next',
      texts: [
        'Buttonholes are made on left front for boys, and on right front for girls, after the first 1 cm and every 5 cm thereafter until 6 in all are made.\nKnit 10 rows.',
      ],
      reading: '10 rows (own 10)',
    },
    {
      title: 'where nothing says how far apart they are nobody knows where they are',
      texts: ['Knit 10 rows, making buttonholes opposite markers.'],
      reading: '10 rows ✗ place not known',
    },
  ])('$title', expectCounts(front));

  it.each([
    {
      title: 'with a gauge they lie in rows',
      texts: [
        'Knit 30 rows, making a buttonhole after the first 1 cm and every 3 cm thereafter until 3 buttonholes are made.',
        'Knit 30 rows, making a buttonhole when piece measures 1 cm and, measuring from 1st row of last buttonhole, every 3 cm thereafter until 3 in all are made.',
        'Work 30 rows in garter st, making a buttonhole, 3 sts in from front edge, when piece measures 1 cm and every 3 cm thereafter until 3 in all are made.',
      ],
      reading: '30 rows (own 3)',
    },
    {
      title: 'a later place is measured from the beginning of the piece too',
      texts: ['Knit 18 rows, making a buttonhole after the first 1 cm and again when piece measures 4 cm.'],
      reading: '18 rows (own 2)',
    },
    {
      title: 'one that would come behind its rows is told',
      texts: ['Knit 16 rows, making a buttonhole after the first 1 cm and again when piece measures 4 cm.'],
      reading: '16 rows (own 1) ✗ place not known',
    },
    {
      title: 'a row that is spelled out in knit and purl has one as any other',
      texts: [
        '1st row: K 1, * p 1, k 1; rep from * to end.\n2nd row: P 1, * k 1, p 1; rep from * to end.\nRep these 2 rows until piece measures 5 cm, making a buttonhole every 2 cm.',
      ],
      reading: '18 rows (own 2)',
    },
    {
      title: 'a row with holes of its own is not called one',
      texts: [
        '1st row: K 1, * yo, k2tog; rep from * to end.\n2nd row: P.\nRep these 2 rows until piece measures 5 cm, making a buttonhole every 2 cm.',
      ],
      reading: '18 rows ✗ place not known',
    },
  ])('$title', expectCounts(`Tension: 20 sts and 40 rows to 10 cm.\n${front}`));
});
