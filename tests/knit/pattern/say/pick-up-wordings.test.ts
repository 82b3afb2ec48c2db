import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('pick up, in all its wordings,', () => {
  it.each(
    table(`
      {Pick up|Pick up and k|Pick up and knit|Pick up, k|Pick up and p|Pick up and work} 30 sts along left neck → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      {With RS facing|From right side|Beg at left|Starting at left|Holding work|Right side facing|RS facing|Working from right|Along neck|At neck} pick up and k 30 sts along left neck → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      Using 4 mm needles pick up and k 30 sts along left neck → needle: mm 4 | @20 pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      Join yarn and pick up 30 sts → pick up: items 'pu ×30', edges [{stitches 30, along ''}]
      Pick up and k 30 sts {evenly along|along|around|from|across|down|up|at|on|off|in|loosely along|evenly around the} left neck → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      Pick up {30 sts|across 30 sts|over 30 sts|the next 30 sts|up 30 sts|evenly 30 sts} at neck → pick up: items 'pu ×30', edges [{stitches 30, along neck}]
      Pick up and k 30 sts along left neck, {k 17|k 17 sts} from holder, pick up and k 30 sts along right neck → pick up: items 'pu ×30, pu ×17, pu ×30', edges [{stitches 30, along 'left neck'}; {stitches 17, along holder, held}; {stitches 30, along 'right neck'}]
      Pick up 30 sts along left neck{;|,} {then pick up|pick up} 17 sts along front → pick up: items 'pu ×30, pu ×17', edges [{stitches 30, along 'left neck'}; {stitches 17, along front}]
      Pick up 30 sts along left neck and pick up 17 sts along front → pick up: items 'pu ×30, pu ×17', edges [{stitches 30, along 'left neck'}; {stitches 17, along front}]
      Pick up 30 sts along left neck and k 17 sts from holder → pick up: items 'pu ×30, pu ×17', edges [{stitches 30, along 'left neck'}; {stitches 17, along holder, held}]
      Pick up 30 sts along left neck then 17 sts across front → pick up: items 'pu ×30, pu ×17', edges [{stitches 30, along 'left neck'}; {stitches 17, along front}]
      Pick up 30 sts along left neck, 17 sts across front → pick up: items 'pu ×30, pu ×17', edges [{stitches 30, along 'left neck'}; {stitches 17, along front}]
      Pick up 30 along left neck → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      Pick up 30 sts along left neck. → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}]
      {With RS facing, k|With RS facing k|Beg at left, k|Join yarn and k} 12 sts from holder, pick up and k 30 sts along neck → pick up: items 'pu ×12, pu ×30', edges [{stitches 12, along holder, held}; {stitches 30, along neck}]
      K 12 from holder, pick up and k 30 sts along neck → pick up: items 'pu ×12, pu ×30', edges [{stitches 12, along holder, held}; {stitches 30, along neck}]
      Sl 12 sts from holder, pick up 30 sts along neck → pick up: items 'pu ×12, pu ×30', edges [{stitches 12, along holder, held}; {stitches 30, along neck}]
      Sl 12 sts off holder, pick up 30 sts along neck → pick up: items 'pu ×12, pu ×30', edges [{stitches 12, along holder, held}; {stitches 30, along neck}]
      K 12 across holder, pick up 30 sts along neck → pick up: items 'pu ×12, pu ×30', edges [{stitches 12, along holder}; {stitches 30, along neck}]
      Pick up 30 sts along neck, k 5 → pick up: items 'pu ×30', edges [{stitches 30, along neck}] | @28 row: items 'k ×5'
      PU 30 sts along left neck → row: items 'pu ×30'
      Pick up 30 sts along neck and back → pick up: items 'pu ×30', edges [{stitches 30, along 'neck and back'}]
      On RS, join yarn and pick up 30 sts along neck → pick up: items 'pu ×30', edges [{stitches 30, along neck}]
      K 5 sts from holder, sl 5 from holder, pick up 30 sts along neck, p 5 from holder, work 5 sts from holder → pick up: items 'pu ×5, pu ×5, pu ×30, pu ×5, pu ×5', edges [{stitches 5, along holder, held}; {stitches 5, along holder, held}; {stitches 30, along neck}; {stitches 5, along holder, held}; {stitches 5, along holder, held}]
      Pick up 30 sts along neck, 5 sts off holder → pick up: items 'pu ×30, pu ×5', edges [{stitches 30, along neck}; {stitches 5, along holder, held}]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Pick up 30 sts along left neck, 17 across front → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}] | ✗ stitch or repeat expected @33
      Pick up 30 sts along left neck (front) → pick up: items 'pu ×30', edges [{stitches 30, along 'left neck'}] | ✗ stitch expected @39
      Pick up 30 sts along one two three four five six seven eight nine ten eleven twelve and more of this and that → pick up: items 'pu ×30', edges [{stitches 30, along 'one two three four five six seven eight nine ten eleven twelve and more'}] | ✗ stitch or repeat expected @97
      Pick up 30 sts along neck and pick 5 → pick up: items 'pu ×30', edges [{stitches 30, along neck}] | ✗ stitch or repeat expected @31
      Pick up 2½ sts → ✗ stitch or repeat expected @1
      Pick up sts → ✗ stitch or repeat expected @1
      K 12, pick up 30 sts along neck → row: items 'k ×12, pu ×30'
      K 12 from holder → row: items 'take ×12'
      Pick up the bar → ✗ stitch or repeat expected @1
      Red pick up 30 sts along neck → ✗ stitch or repeat expected @1
      K 12 from red, pick up 30 sts along neck → ✗ stitch or repeat expected @6
      K 12 sts, then pick up 30 sts from holder → ✗ stitch or repeat expected @31
    `),
  )('is not read for more than it says: $line', expectReading);
});
