/** What the row language can refuse, and spreading shapings over rows and stitches. */
export interface RowFaults {
  'bad count': never;
  'stitches left over': 'leftStitches' | 'onNeedleStitches';
  'not enough stitches': 'needStitches' | 'haveStitches';
  'repeat does not come out': 'byStitches' | 'spanStitches';
  'endless repeat': never;
  'count not known': 'changeStitches';
  'no marker': never;
  'too many for one row': 'stitches' | 'times' | 'mostTimes';
  'shaping does not fit': 'rows' | 'times' | 'mostTimes';
  'not understood': 'column' | 'expectedText';
  'nested too deep': 'depth';
}
