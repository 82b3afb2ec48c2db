import { describe, expect, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading, reading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a yarn, in all wordings,', () => {
  it.each(
    table(`
      {With|Using|In} {B|the B|your B|yarn B|wool B|colour B|color B|shade B|B only|B yarn} → yarn: name B
      {Change|Changing|Switch|Switching} {to|back to} {B|the B|yarn B|your yarn B|the colour B} → yarn: name B
      {Join|Joining|Attach the|Tie in|Tie on|Join in|Joining the|Join your|Join yarn} B only → yarn: name B
      Work 4 rows B → @13 yarn: name B | even: until {rows, n 4}
      With B {k|K} 1 → yarn: name B | @8 row: items k
      With B p1 → yarn: name B | @8 row: items p
      With B{,|;|:} k1 → yarn: name B | @9 row: items k
      With B and k1 → yarn: name B | @12 row: items k
      With B {bind off|bo} → yarn: name B | @8 bind off
      With B {cont|work} in st st → yarn: name B | @8 even: fabric {named, name stocking}
      With B {cast on|cast-on} 9 sts → yarn: name B | @8 cast on: stitches 9
      With B pick up 5 sts → yarn: name B | @8 pick up: items 'pu ×5', edges [{stitches 5, along ''}]
    `),
  )('is named: $line', expectReading);

  it.each(
    ['With', 'Using', 'Use', 'Holding', 'Hold the'].flatMap((lead) =>
      [
        '2 strands',
        '1 strand',
        '2 threads',
        'one thread of B',
        '3 ends',
        '2 ends of each',
        'strand of A and a strand of B',
        '2 strands of yarn held together',
        'A and B together',
        'A & B held double',
        'mc and cc doubled',
        'both yarns held together',
        'both colours together',
        'yarn double',
        'wool doubled',
        'yarn single',
        'yarn singly',
        'double yarn',
      ].map((strands) => [lead, strands]),
    ),
  )('is held as it is said, not as the first that is named: %s %s', (lead, strands) => {
    const yarn = `yarn: name ${/^\w+$/.test(strands) ? strands : `'${strands}'`}, held`;
    expect(reading(`${lead} ${strands}`)).toBe(yarn);
    expect(reading(`${lead} ${strands} throughout`)).toBe(`${yarn}, all`);
    expect(reading(`${lead} ${strands} k1`)).toMatch(new RegExp(`^${yarn} \\| @\\d+ row: items k$`));
    expect(reading(`${lead} ${strands} cast on 9 sts`)).toMatch(/ held \| @\d+ cast on: stitches 9$/);
  });

  it.each(
    table(`
      With {2 balls|2 red|2 held|one ball of yarn|both yarns} → ✗ stitch or repeat expected @6
      With B {throughout|on 9 sts|hold 9 sts} → ✗ stitch or repeat expected @8
      With A and B → yarn: name A | ✗ stitch or repeat expected @12
      {Change B|Change your yarn|B, k1} → ✗ stitch or repeat expected @1
      Tie B → rejoin | ✗ stitch or repeat expected @5
      Tie to B → rejoin | ✗ stitch or repeat expected @8
    `),
  )('is not read for more than it says: $line', expectReading);
});
