import { attempt, type Cursor, sees, takeAnyPhrase, takePhrase, takes, took } from '../../row/read/cursor.ts';
import { skipNotes } from './even.ts';
import { readFabric } from './phrase/fabric.ts';
import type { Statement } from './statement.ts';

const GARMENT =
  'jacket|sweater|cardigan|garment|vest|scarf|blanket|afghan|hat|shawl|stole|pullover|coat|jumper|cloth|dishcloth|' +
  'set|dress|suit|bolero|shrug|poncho|outfit|piece';

/** 'The entire jacket is worked in garter st', 'st st for entire sweater', 'moss st is used throughout': the fabric of whatever the text begins. */
export const readWholly = (c: Cursor): Statement | undefined =>
  attempt(c, () => {
    takes(c, 'work', 'k');
    const garment = takePhrase(c, `the|this|all? entire|whole|complete? ${GARMENT}`);
    // 'this piece is in rib' says it of that piece
    if (took(c, 'piece') && !sees({ ...c, at: c.at - 2 }, 'entire', 'whole')) return undefined;
    if (garment && !takeAnyPhrase(c, 'is|are? worked|knitted|k|made? in')) return undefined;
    const fabric = readFabric(c);
    if (fabric?.is !== 'named' && fabric?.is !== 'rib') return undefined;
    skipNotes(c);
    const whole =
      takePhrase(c, 'is|are? used throughout') ||
      takePhrase(c, `for|throughout the|this? entire|whole|complete ${GARMENT}`);
    if (garment) takes(c, 'throughout');
    return (garment || whole) && (c.at >= c.end || sees(c, '.'))
      ? { is: 'even', fabric, wholly: true }
      : undefined;
  });
