import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('heading, in all its wordings,', () => {
  it.each(
    table(`
      {BACK|Back|Back:|Back:-} → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      The back → heading: title {words 'the back', pattern 'the back', divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      Back - → heading: title {words 'back -', pattern 'back -', divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      {Armbands|Armbands (make 2)} → heading: title {words armbands, pattern armbands, divides false}, sideOnly false, talk false, places [], piece {name armbands, makes 2}
      Sleeves → heading: title {words sleeves, pattern sleeves, divides false}, sideOnly false, talk false, places [], piece {name sleeves, makes 2}
      Pockets → heading: title {words pockets, pattern pockets, divides false}, sideOnly false, talk false, places [], piece {name pockets, makes 2}
      Booties → heading: title {words booties, pattern booties, divides false}, sideOnly false, talk false, places [], piece {name booties, makes 2}
      Mittens → heading: title {words mittens, pattern mittens, divides false}, sideOnly false, talk false, places [], piece {name mittens, makes 2}
      Mitts → heading: title {words mitts, pattern mitts, divides false}, sideOnly false, talk false, places [], piece {name mitts, makes 2}
      Cuffs → heading: title {words cuffs, pattern cuffs, divides false}, sideOnly false, talk false, places [], piece {name cuffs, makes 2}
      Ties → heading: title {words ties, pattern ties, divides false}, sideOnly false, talk false, places [], piece {name ties, makes 2}
      Straps → heading: title {words straps, pattern straps, divides false}, sideOnly false, talk false, places [], piece {name straps, makes 2}
      Wristlets → heading: title {words wristlets, pattern wristlets, divides false}, sideOnly false, talk false, places [], piece {name wristlets, makes 2}
      Bands → heading: title {words bands, pattern bands, divides false}, sideOnly false, talk false, places [], piece {name bands, makes 2}
      Legs → heading: title {words legs, pattern legs, divides false}, sideOnly false, talk false, places [], piece {name legs, makes 2}
      Socks → heading: title {words socks, pattern socks, divides false}, sideOnly false, talk false, places [], piece {name socks, makes 2}
      Fronts → heading: title {words fronts, pattern fronts, divides false, half left}, sideOnly false, talk false, places [], piece {name fronts, makes 2, half left}
      Left sleeves → heading: title {words 'left sleeves', pattern 'left sleeves', divides false}, sideOnly false, talk false, places [], piece {name 'left sleeves', makes 1}
      Right fronts → heading: title {words 'right fronts', pattern 'right fronts', divides false, half right}, sideOnly false, talk false, places [], piece {name 'right fronts', makes 1, half right}
      First bands → heading: title {words 'first bands', pattern 'first bands', divides false}, sideOnly false, talk false, places [], piece {name 'first bands', makes 1}
      Second bands → heading: title {words 'second bands', pattern 'second bands', divides false}, sideOnly false, talk false, places [], piece {name 'second bands', makes 1}
      Sleeve or sleeves → heading: title {words 'sleeve or sleeves', pattern 'sleeve or sleeves', divides false}, sideOnly false, talk false, places [], piece {name 'sleeve or sleeves', makes 1}
      {Sleeve (make 2)|Sleeve [make 2]|Sleeve - make 2|Sleeve, make 2|Sleeve make two|Sleeve (both alike)|Sleeve (knit 2)|Sleeve (work 2)|Sleeve knit 2|Sleeve work 2|Sleeve (2)|Sleeve 2|Sleeve (make a pair)|Sleeve (both)|Sleeve, both alike|Sleeve cut 2} → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 2}
      Sleeve (make 30) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 20}
      Sleeve 30 → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 30}
      Sleeve (make 0) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1}
      Sleeve (make 2½) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1}
      Sleeve (make) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1}
      Sleeve (alike) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 2}
      Left front → heading: title {words 'left front', pattern 'left front', divides false, half left}, sideOnly false, talk false, places [], piece {name 'left front', makes 1, half left}
      Right front: → heading: title {words 'right front', pattern 'right front', divides false, half right}, sideOnly false, talk false, places [], piece {name 'right front', makes 1, half right}
      Left side → heading: title {words 'left side', pattern 'left side', divides false, half left}, sideOnly, talk false, places []
      Second half → heading: title {words 'second half', pattern 'second half', divides false}, sideOnly, talk false, places [], piece {name 'second half', makes 1}
      First shoulder → heading: title {words 'first shoulder', pattern 'first shoulder', divides}, sideOnly, talk false, places [shoulder]
      Neckband → heading: title {words neckband, pattern neckband, divides}, sideOnly false, talk false, places [neck], piece {name neckband, makes 1}
      Front band → heading: title {words 'front band', pattern 'front band', divides false}, sideOnly false, talk false, places [], piece {name 'front band', makes 1}
      Neck edging → heading: title {words 'neck edging', pattern 'neck edging', divides}, sideOnly false, talk false, places [neck], piece {name 'neck edging', makes 1}
      Buttonhole band → heading: title {words 'buttonhole band', pattern 'buttonhole band', divides false}, sideOnly false, talk false, places [], piece {name 'buttonhole band', makes 1}
      Shoulder border → heading: title {words 'shoulder border', pattern 'shoulder border', divides}, sideOnly false, talk false, places [shoulder], piece {name 'shoulder border', makes 1}
      Neck collar → heading: title {words 'neck collar', pattern 'neck collar', divides}, sideOnly false, talk false, places [neck], piece {name 'neck collar', makes 1}
      Back neck → heading: title {words 'back neck', pattern 'back neck', divides}, sideOnly false, talk false, places [neck]
      Finishing → heading: title {words finishing, pattern finishing, divides false}, sideOnly false, talk, places []
      Materials → heading: title {words materials, pattern materials, divides false}, sideOnly false, talk, places []
      Abbreviations → heading: title {words abbreviations, pattern abbreviations, divides false}, sideOnly false, talk, places []
      Measurements → heading: title {words measurements, pattern measurements, divides false}, sideOnly false, talk, places []
      Note → heading: title {words note, pattern note, divides false}, sideOnly false, talk, places []
      Notes → heading: title {words notes, pattern notes, divides false}, sideOnly false, talk, places []
      Needles → heading: title {words needles, pattern needles, divides false}, sideOnly false, talk, places []
      Yarn → heading: title {words yarn, pattern yarn, divides false}, sideOnly false, talk, places []
      Making up → heading: title {words 'making up', pattern 'making up', divides false}, sideOnly false, talk, places []
      Makeup → heading: title {words makeup, pattern makeup, divides false}, sideOnly false, talk, places []
      Assembly → heading: title {words assembly, pattern assembly, divides false}, sideOnly false, talk, places []
      Blocking → heading: title {words blocking, pattern blocking, divides false}, sideOnly false, talk, places []
      Pressing → heading: title {words pressing, pattern pressing, divides false}, sideOnly false, talk, places []
      General → heading: title {words general, pattern general, divides false}, sideOnly false, talk, places []
      Tips → heading: title {words tips, pattern tips, divides false}, sideOnly false, talk, places []
      Equipment → heading: title {words equipment, pattern equipment, divides false}, sideOnly false, talk, places []
      Supplies → heading: title {words supplies, pattern supplies, divides false}, sideOnly false, talk, places []
      Terms → heading: title {words terms, pattern terms, divides false}, sideOnly false, talk, places []
      Schematic → heading: title {words schematic, pattern schematic, divides false}, sideOnly false, talk, places []
      Level → heading: title {words level, pattern level, divides false}, sideOnly false, talk, places []
      Special → heading: title {words special, pattern special, divides false}, sideOnly false, talk, places []
      To finish → heading: title {words 'to finish', pattern 'to finish', divides false}, sideOnly false, talk, places []
      To make up → heading: title {words 'to make up', pattern 'to make up', divides false}, sideOnly false, talk, places []
      Instructions → heading: title {words instructions, pattern instructions, divides false}, sideOnly false, talk false, places []
      Directions → heading: title {words directions, pattern directions, divides false}, sideOnly false, talk false, places []
      Pattern → heading: title {words pattern, pattern '', divides false}, sideOnly false, talk false, places []
      Stitches used → heading: title {words 'stitches used', pattern 'stitches used', divides false}, sideOnly false, talk false, places []
      Shape armholes → heading: title {words 'shape armholes', pattern 'shape armholes', divides false}, sideOnly false, talk false, places [armhole]
      Armhole shaping → heading: title {words 'armhole shaping', pattern 'armhole shaping', divides false}, sideOnly false, talk false, places [armhole]
      Shape underarm → heading: title {words 'shape underarm', pattern 'shape underarm', divides false}, sideOnly false, talk false, places [armhole]
      Underarm → heading: title {words underarm, pattern underarm, divides false}, sideOnly false, talk false, places [armhole]
      Shape raglan → heading: title {words 'shape raglan', pattern 'shape raglan', divides false}, sideOnly false, talk false, places [raglan]
      Raglan → heading: title {words raglan, pattern raglan, divides false}, sideOnly false, talk false, places [raglan]
      Shape shoulders → heading: title {words 'shape shoulders', pattern 'shape shoulders', divides}, sideOnly false, talk false, places [shoulder]
      Shoulder shaping → heading: title {words 'shoulder shaping', pattern 'shoulder shaping', divides}, sideOnly false, talk false, places [shoulder]
      Shape neck → heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
      Neck → heading: title {words neck, pattern neck, divides}, sideOnly false, talk false, places [neck]
      V shaping → heading: title {words 'v shaping', pattern 'v shaping', divides false}, sideOnly false, talk false, places [neck]
      Shape cap → heading: title {words 'shape cap', pattern 'shape cap', divides false}, sideOnly false, talk false, places [cap]
      Sleeve top → heading: title {words 'sleeve top', pattern 'sleeve top', divides false}, sideOnly false, talk false, places [cap], piece {name 'sleeve top', makes 1}
      Top → heading: title {words top, pattern top, divides false}, sideOnly false, talk false, places [cap]
      Waist → heading: title {words waist, pattern waist, divides false}, sideOnly false, talk false, places [waist]
      Shape waist → heading: title {words 'shape waist', pattern 'shape waist', divides false}, sideOnly false, talk false, places [waist]
      Shape armholes and neck → heading: title {words 'shape armholes and neck', pattern 'shape armholes and neck', divides}, sideOnly false, talk false, places [armhole; neck]
      Divide for neck → heading: title {words 'divide for neck', pattern 'divide for neck', divides}, sideOnly false, talk false, places [neck]
      Begin neck edge → heading: title {words 'begin neck edge', pattern 'begin neck edge', divides}, sideOnly false, talk false, places [neck]
      Shape 1st side → heading: title {words 'shape 1 st side', pattern 'shape 1 side', divides false}, sideOnly, talk false, places []
      Shape 2nd shoulder and neck → heading: title {words 'shape 2 nd shoulder and neck', pattern 'shape 2 nd shoulder and neck', divides}, sideOnly false, talk false, places [shoulder; neck]
      Shape armhole: k 1 row → heading: title {words 'shape armhole', pattern 'shape armhole', divides false}, sideOnly false, talk false, places [armhole] | @16 rows: n 1, items 'k to {left 'what follows'}'
      Back: Cast on 92 sts → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1} | @7 cast on: stitches 92
      … Back: cast on 92 sts → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1} | @7 cast on: stitches 92
      … Finishing → note: about 'making up'
      … Neck: k 1 row → heading: title {words neck, pattern neck, divides}, sideOnly false, talk false, places [neck] | @7 rows: n 1, items 'k to {left 'what follows'}'
      Size 4: → note: about 'making up'
      Left shoulder → heading: title {words 'left shoulder', pattern 'left shoulder', divides, half left}, sideOnly, talk false, places [shoulder]
      Back shoulder → heading: title {words 'back shoulder', pattern 'back shoulder', divides}, sideOnly, talk false, places [shoulder]
      Back shoulder band → heading: title {words 'back shoulder band', pattern 'back shoulder band', divides}, sideOnly false, talk false, places [shoulder], piece {name 'back shoulder band', makes 1}
      Sleeve (make both) → heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 2}
      The 1st sleeve → heading: title {words 'the 1 st sleeve', pattern 'the 1 sleeve', divides false}, sideOnly false, talk false, places []
      Front and back neckband → heading: title {words 'front and back neckband', pattern 'front and back neckband', divides}, sideOnly false, talk false, places [neck], piece {name 'front and back neckband', makes 1}
      Right half → heading: title {words 'right half', pattern 'right half', divides false, half right}, sideOnly, talk false, places [], piece {name 'right half', makes 1, half right}
      Shape v neck → heading: title {words 'shape v neck', pattern 'shape v neck', divides}, sideOnly false, talk false, places [neck]
      Sleeve top shaping → heading: title {words 'sleeve top shaping', pattern 'sleeve top shaping', divides false}, sideOnly false, talk false, places [cap]
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Back: Front: Sleeve: Collar: Cast on 92 sts → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1} | @7 heading: title {words front, pattern front, divides false}, sideOnly false, talk false, places [], piece {name front, makes 1} | @14 heading: title {words sleeve, pattern sleeve, divides false}, sideOnly false, talk false, places [], piece {name sleeve, makes 1} | @30 cast on: stitches 92
      … Back → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      … Shape the neck with wool → ✗ stitch or repeat expected @1
      … Shape neck → heading: title {words 'shape neck', pattern 'shape neck', divides}, sideOnly false, talk false, places [neck]
      Shape neck edge of right back hood collar → ✗ stitch or repeat expected @1
      Sleeve (pair) → ✗ stitch or repeat expected @1
      Sleeve (a pair) → ✗ stitch or repeat expected @1
      Back; front → ✗ stitch expected @12
      Back 3 → heading: title {words back, pattern back, divides false}, sideOnly false, talk false, places [], piece {name back, makes 3}
      Front and back and sleeve → heading: title {words 'front and back and sleeve', pattern 'front and back and sleeve', divides false}, sideOnly false, talk false, places []
      Front and back and the sleeve → heading: title {words 'front and back and the sleeve', pattern 'front and back and the sleeve', divides false}, sideOnly false, talk false, places []
      Pattern one two three four → ✗ stitch or repeat expected @13
      Special old new thing → heading: title {words 'special old new thing', pattern 'special old new thing', divides false}, sideOnly false, talk, places []
      Special old new thing here → ✗ stitch or repeat expected @1
      Lace → ✗ stitch or repeat expected @1
      Left → heading: title {words left, pattern left, divides false, half left}, sideOnly false, talk false, places []
      The first left → heading: title {words 'the first left', pattern 'the first left', divides false, half left}, sideOnly false, talk false, places []
      Sleeve (short) → ✗ stitch or repeat expected @1
      : back → ✗ stitch expected @7
      (Back) → heading: title {words '( back )', pattern '( back )', divides false}, sideOnly false, talk false, places [], piece {name back, makes 1}
      (make 2) sleeve → ✗ stitch or repeat expected @10
      Sleeve (3 long ones) → ✗ stitch or repeat expected @1
      Sleeve 2 3 → ✗ stitch or repeat expected @1
      Sleeve 2½ 3 → ✗ stitch or repeat expected @1
      Shape armhole 3 → ✗ stitch or repeat expected @1
    `),
  )('is not read for more than it says: $line', expectReading);
});
