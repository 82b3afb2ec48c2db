/** A stretch that a read pattern gives as a length; shown while it is knitted. */
export const words = {
  title: 'Measure now and then: {length}',
  titleOpen: 'Knit on until it is as long as the pattern says',
  from: {
    one: 'Measured {where}. As planned {count} row is left.',
    other: 'Measured {where}. As planned {count} rows are left.',
  },
  start: 'from the cast-on edge',
  here: 'from where this stretch begins',
  armhole: 'from where the armhole begins',
  rib: 'from the end of the rib',
  elsewhere: 'from where the pattern says',
  longEnough: 'Long enough',
  twoMore: 'Two rows more',
  oneFirst: 'It can end after the next row, so that what follows begins on the right side of the work.',
} as const;
