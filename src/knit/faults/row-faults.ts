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
  'stitch expected': 'column';
  'stitch or repeat expected': 'column';
  'bracket expected': 'bracketText' | 'column';
  'nothing before the repeat': 'column';
  'nested too deep': 'depth';
  'work after a turn': never;
}
