import { describe, it } from 'vitest';
import { table } from '../../table.ts';
import { expectReading } from '../said.ts';

/** How patterns are usually worded: common practice, no published source. */
describe('a place, in all its wordings,', () => {
  it.each(
    table(`
      Work as for back to {armhole|armholes|underarm|underarms|beg of armhole|start of armhole|end of armhole|bottom of armhole|top of armhole|base of armhole|the beg of armhole|the start of armhole|the end of armhole|the bottom of armhole|the top of armhole|first row of armhole|the armhole|end armhole|beg armhole|first armhole|1st armhole|front armhole|back armhole|shape armhole|shaping armhole|shaping the armhole|shaping of armhole|the back armhole|of armhole|armhole shaping|armhole shapings|armhole edge|armhole opening|armhole bind-off|armhole bo|armhole dec|armhole bind offs|armhole bind-off shaping} → as for: piece {words back, name back}, reversing false, to {place, place armhole}
      Work as for back to {neck|neckline|neck shaping} → as for: piece {words back, name back}, reversing false, to {place, place neck}
      Work as for back to {shoulder|shoulders|shoulder shaping|1st shoulder bind-off} → as for: piece {words back, name back}, reversing false, to {place, place shoulder}
      Work as for back to {raglan|raglan shaping} → as for: piece {words back, name back}, reversing false, to {place, place raglan}
      Work as for back to {cap|cap shaping} → as for: piece {words back, name back}, reversing false, to {place, place cap}
      Work as for back to {rib|ribbing|border|band|welt} → as for: piece {words back, name back}, reversing false, to {place, place rib}
      Work as for back to waist → as for: piece {words back, name back}, reversing false, to {place, place waist}
      Work even until same length as back → even: until {same length, piece {words back, name back}}
      Work even until same length as front → even: until {same length, piece {words front, name front}}
      Work even until same length as fronts → even: until {same length, piece {words fronts, name fronts}}
      Work even until same length as sleeve → even: until {same length, piece {words sleeve, name sleeve}}
      Work even until same length as sleeves → even: until {same length, piece {words sleeves, name sleeves}}
      Work even until same length as body → even: until {same length, piece {words body, name body}}
      Work even until same length as {first|1st} sleeve → even: until {same length, piece {words 'first sleeve', name sleeve}}
      Work even until same length as other sleeve → even: until {same length, piece {words 'other sleeve', name sleeve}}
      Work even until same length as second sleeve → even: until {same length, piece {words 'second sleeve', name sleeve}}
      Work even until same length as {first|1st} front → even: until {same length, piece {words 'first front', name front}}
      Work even until same length as other front → even: until {same length, piece {words 'other front', name front}}
      Work even until same length as second front → even: until {same length, piece {words 'second front', name front}}
      Work even until same length as left front → even: until {same length, piece {words 'left front', name 'left front'}}
      Work even until same length as right front → even: until {same length, piece {words 'right front', name 'right front'}}
      Work even until same length as left back → even: until {same length, piece {words 'left back', name 'left back'}}
      Work even until same length as right sleeve → even: until {same length, piece {words 'right sleeve', name 'right sleeve'}}
      Work even until same length as left fronts → even: until {same length, piece {words 'left fronts', name 'left fronts'}}
      Work even until same length as right half → even: until {same length, piece {words 'right half', name 'right half'}}
      Work even until same length as left shoulder → even: until {same length, piece {words 'left shoulder', name 'left shoulder'}}
      Work even until same length as right side → even: until {same length, piece {words 'right side', name 'right side'}}
      Work even until same length as first side → even: until {same length, piece {words 'first side'}}
      Work even until same length as {first|1st} half → even: until {same length, piece {words 'first half', name half}}
      Work even until same length as other half → even: until {same length, piece {words 'other half', name half}}
      Work even until same length as second half → even: until {same length, piece {words 'second half', name half}}
      Work even until same length as piece → even: until {same length, piece {words piece}}
      Work even until same length as other side → even: until {same length, piece {words 'other side'}}
      Work even until same length as first shoulder → even: until {same length, piece {words 'first shoulder', name shoulder}}
      Work even until same length as left → even: until {same length, piece {words left, name left}}
      Work even until same length as right → even: until {same length, piece {words right, name right}}
      Work even until piece measures 10 cm {from beg|from start|from cast-on edge|from the cast on edge|from lower edge|from bottom edge|from CO edge|altogether|in all|in total|total|above the start|from the beg|from all beginning|from the start of work} → even: until {length, mm 100, from start}
      Work even until piece measures 10 cm {from bind-off|from first BO|from bound off sts|from armhole|from underarm|from the armhole shaping|above underarm|from beg of armhole|from start of armhole shaping|after first bind-off|past armhole|beyond armhole|of armhole|below armhole|from the beg of armhole|from the start of armhole|from the start of the armhole|from the end of armhole|from the top of armhole|from end of armhole} → even: until {length, mm 100, from armhole}
      Work even until piece measures 10 cm {from rib|from top of rib|above ribbing|from border|from band|from top of band|from the top|from the top of rib|from the end of ribbing|from the end of the ribbing|from welt|from hem|from hemline|from cuff|from turn|from change|above rib edge} → even: until {length, mm 100, from rib}
      Work even until piece measures 10 cm {from marker|from mark|from m|from pick-up row|from picked up sts|from pu row|from last marker} → even: until {length, mm 100, from marker}
      Work even until piece measures 10 cm {from last dec|from neck|from division row|from divide row|from here|from this row|from shaping|from dec row|from inc row|from last inc|from neck shaping|after final dec|from initial dec|from end of shaping|from the end of shaping|from the beg of neck|from the beg of neck shaping|from the end of last dec|from the end} → even: until {length, mm 100, from heading}
      Work even until piece measures 10 cm from {armhole bind-off edge|armhole sts|armhole st|armhole row|armhole rows|armhole shapings|armhole line|armhole cast on|armhole bound off|armhole bind offs} → even: until {length, mm 100, from armhole}
      Work even until piece measures 10 cm from {last neck dec|dec rib|dec underarm|dec armhole|dec inc|dec band|dec ridge|dec up|dec border|dec hem|dec neck|dec work|dec for|dec of} → even: until {length, mm 100, from heading}
    `),
  )('is read: $line', expectReading);

  it.each(
    table(`
      Work even until same length as first piece → ✗ stitch or repeat expected @38
      Work even until piece measures 10 cm {from first row|from the 1st row|from start of work|from the first} → ✗ stitch or repeat expected @38
      Work even until piece measures 10 cm from red → ✗ stitch or repeat expected @38
      Work even until piece measures 10 cm from end of red → ✗ stitch or repeat expected @38
      Work as for back to red → ✗ stitch or repeat expected @21
    `),
  )('is not read for more than it says: $line', expectReading);
});
