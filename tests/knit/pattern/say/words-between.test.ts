import { describe, it } from 'vitest';
import { table } from '../table.ts';
import { expectReading } from './said.ts';

/** Common practice, no published source. Words that say nothing of their own between those that do, of every construct. */
describe('a word that may be left out', () => {
  it.each(
    table(`
      With {yarn A|wool A|shade A|the A|A yarn|A wool|A shade|A} → yarn: name A
      With {color A|colour A|A color|A colour} → yarn: name A
      With red → yarn: name red
      With {mc|MC} → yarn: name MC
      With main color → yarn: name main
      With white → yarn: name white
      In a pattern → even: fabric {established}
      Work in st st, keeping 3 sts at each end in garter st{| as before| as set} → @16 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | even: fabric {named, name stocking}
      Work in st st, keeping 3 sts at each end in garter st throughout → @16 borders: borders [{edge both, stitches 3, fabric {named, name garter}}], throughout | even: fabric {named, name stocking}
      Keeping the 5 sts in garter st at front edge → borders: borders [{edge neck, stitches 5, fabric {named, name garter}}]
      Dec 1 st at the beg of next row → shape: change -1, edge beginning, beats [{first 1, every 1, times 1}]
      Bind off rem sts{| loosely| in patt} → bind off: rest
      Rem 22 sts bind off {loosely|in patt|firmly} → bind off: rest, stitches 22
      Work in st st {over|on} {the 38|these 38|38|center 38} sts → even: fabric {named, name stocking}, over 38
      Work in st st {over|on|across} {the 38|these 38|38|center 38|the center 38|rem 38|middle 38} sts{| only} for 4 rows → even: fabric {named, name stocking}, until {rows, n 4}, over 38
      Rem 22 sts bind off{| for neck| for back neck| for the back of neck| loosely| in patt| for neck loosely| in rib} → bind off: rest, stitches 22
      {Rem|The rem} 22 sts, bind off → bind off: rest, stitches 22
      Rem sts bind off loosely → bind off: rest
      Basket pattern (multiple of 8 plus 4) → multiple: of 8, plus 4, name basket
      Basket pattern (multiple of {8 sts plus 4 sts|a 8 + 4|8 and 4|8, plus 4}){:|} → multiple: of 8, plus 4, name basket
      Basket pattern: multiple of 8 + 4: → multiple: of 8, plus 4, name basket
      Basket pattern: multiple of 8 → multiple: of 8, plus 0, name basket
      Work 6 ridges → even: until {rows, n 12}
      Work until piece measures 10 cm from {rib|ribbing|border|band|welt} → even: until {length, mm 100, from rib}
      Work 10 cm {|more |deep }in st st → even: fabric {named, name stocking}, until {length, mm 100, from here}
      Work a further {6 rows|6 more rows|6 rows more} → even: until {rows, n 6}
      Work for {3 ridges|a further 3 ridges} → even: until {rows, n 6}
      {Leave|Transfer|Sl|Place|Put} {rem|the rem} 20 sts on holder → hold: which rest, stitches 20
      Work {each|both} side{|s} separately → work on: which 'each side'
      Bind off 5 sts at {beg|the beg} of next 2 rows → groups: work bo, edge beginning, groups [{stitches 5, rows 2, every 1}]
      Bind off {the next|the first|the rem|next|first} 5 sts at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
      Bind off 5 {more|new} sts at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
      Bind off 5 sts {loosely|in patt|in rib} at neck edge → groups: work bo, edge neck, groups [{stitches 5, rows 1, every 2}]
      Work in st st, keeping 3 sts at each end in garter st for border{| as before| as set} → @16 borders: borders [{edge both, stitches 3, fabric {named, name garter}}] | even: fabric {named, name stocking}
      Work in st st, keeping 3 sts at each end in garter st for border throughout → @16 borders: borders [{edge both, stitches 3, fabric {named, name garter}}], throughout | even: fabric {named, name stocking}
      Work {buttonhole|a buttonhole|first buttonhole|buttonhole row} on next row as follows: k2, bo 2, k to end → row: label {rows [], name buttonhole}, items 'k ×2, bo ×2, k to {left 0}'
    `),
  )('changes nothing: $line', expectReading);
});
