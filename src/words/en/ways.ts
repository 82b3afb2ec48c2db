/** Where two devices knitted a make without each other, and went two ways. */
export const words = {
  title: 'Two devices went two ways here',
  open: 'Two ways here: choose',
  ask: 'Which of these is on your needles? The other is kept, under Rip back.',
  here: 'this device',
  elsewhere: 'the other device',
  choose: 'Row {row} worked',
  chooseStart: 'Nothing knitted, {rows} rows',
  left: 'Row {row} worked, {stitches}, from {device}: you left that when two devices were united.',
  takeUp: 'Take that up again',
} as const;
