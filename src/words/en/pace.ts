/** How fast she knits, and when. */
export const words = {
  paceRows: 'Rows an hour',
  paceStitches: 'Stitches an hour',
  paceLeft: 'Still to knit',
  paceDone: 'About {time} of knitting to the end of this part.',
  paceByDay: 'At {day} a week as in the last four weeks: on {date}.',
  paceFew: 'The pace shows after a few rows in one sitting.',
  paceFrom: { one: 'From {count} row, pauses left out.', other: 'From {count} rows, pauses left out.' },
  sittings: 'Sittings',
  sittingLine: '{date}: {rows}, {time}',
  sittingsPlot: {
    one: 'The last {count} sitting: rows in each',
    other: 'The last {count} sittings: rows in each',
  },
} as const;
