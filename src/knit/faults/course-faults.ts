/** What cannot be done with a piece under way: planned anew, ripped back, knitted beside another. */
export interface CourseFaults {
  'nothing left': never;
  'shaping to come does not fit': 'rows' | 'times' | 'mostTimes';
  'too few rows for its shaping': 'row' | 'rows';
  'no stretch ends there': 'heightMm';
  'too few rows before the neck': 'leftRows';
  'fewer rows than knitted': 'rows' | 'workedRows';
  'cannot be taken up': 'offStitches';
  'measure again': 'measuredMm' | 'plannedMm';
  'no neck ahead': never;
  'row outside': 'rows' | 'row';
  'nothing to rip': 'row' | 'fromRow';
  'no lifeline': 'fromRow';
  'no firm ground': 'fromRow';
  'all done': never;
  'not level': 'rows';
  'sides differ': never;
}
