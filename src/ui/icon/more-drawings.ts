import type { Drawing } from './drawings.ts';

/** Fetched after the row in hand is on the screen. */
export const moreDrawings = {
  notch: { d: 'M5 3.5h14v17H5', fill: 'M4 6.5 11 12l-7 5.5z' },
  castOn: { d: 'M4 18h10M8 13c0-4 5-4 5 0M18 9v9M13.5 13.5h9' },
  turn: { d: 'M4 8h11a4.5 4.5 0 0 1 0 9H9M12.5 13.5 9 17l3.5 3.5' },
  history: { d: 'M4 5v5h5M4.5 10a8 8 0 1 1-.5 3.5M12 8v4.5l3 2' },
  text: { d: 'M5 3.5h14v17H5zM8.5 8h7M8.5 12h7M8.5 16h4' },
  note: { d: 'M5 3.5h10l4 4V20.5H5zM8.5 11h7M8.5 15.5h5' },
  erase: { d: 'M8.5 6H20v12H8.5L3.5 12zM11.5 9.5l5 5M16.5 9.5l-5 5', turns: true },
  rip: { d: 'M4 20h16M4 16h9M16.5 16.5c4-1 4-5 0-5s-4-5 0-5.5M13 9 16.5 6 13 3' },
  yarn: {
    d: 'M12 3.5a8 8 0 1 1 0 16 8 8 0 0 1 0-16M6 7.5c5 0 9.5 4 11.5 9.5M9.5 4.5c4 1 8 4.5 9.5 9M4.5 12.5c4 0 6.5 2 8.5 6.5M15 18.5c1.5 2 4 2.5 6.5 1.5',
  },
  onward: { d: 'M9.5 5l7 7-7 7', turns: true },
  speaker: { d: 'M4 9.5h3.5L12 5.5v13l-4.5-4H4zM15.5 9a4.5 4.5 0 0 1 0 6M18 6.5a8 8 0 0 1 0 11' },
  warning: { d: 'M12 4 21 19.5H3zM12 10v4', fill: 'M12 15.7a1.2 1.2 0 1 1 0 2.4 1.2 1.2 0 0 1 0-2.4' },
  fault: {
    d: 'M8.5 3.5h7l5 5v7l-5 5h-7l-5-5v-7zM12 8v5',
    fill: 'M12 14.7a1.3 1.3 0 1 1 0 2.6 1.3 1.3 0 0 1 0-2.6',
  },
  photo: { d: 'M3.5 7.5h4l1.5-2.5h6l1.5 2.5h4v11.5h-17zM12 9.5a3.5 3.5 0 1 1 0 7 3.5 3.5 0 0 1 0-7' },
  print: { d: 'M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z' },
  share: { d: 'M12 14V3.5M8 7l4-3.5L16 7M7 11H5v9.5h14V11h-2' },
  settings: {
    d: 'M4 7h9M18 7h2M15.5 4.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5M4 17h2M11 17h9M8.5 14.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5',
  },
  edit: { d: 'M4 20l1-4.5L16 4.5l3.5 3.5L8.5 19zM13.5 7l3.5 3.5' },
  count: { d: 'M4 8c0 4 3 4 3 0s3-4 3 0-0 4 2 4 2 0 2-4 3-4 3 0 3 4 3 0M4 18h16' },
  measure: { d: 'M3 8h18v8H3zM7 8v3.5M11 8v5M15 8v3.5M18 8v5' },
  find: { d: 'M10.5 4a6.5 6.5 0 1 1 0 13 6.5 6.5 0 0 1 0-13M15.3 15.3 20.5 20.5' },
  flag: { d: 'M6 21V4c4-2 7 2 12 0v9c-5 2-8-2-12 0' },
  download: { d: 'M12 4v11M8 11.5l4 4 4-4M5 20h14' },
  trash: { d: 'M5 7h14M9 7V4h6v3M7 7l1 13h8l1-13' },
  garment: { d: 'M8.5 4 3 8l2.5 4L8 10.5V20h8v-9.5l2.5 1.5L21 8l-5.5-4c-1.5 2.5-5.5 2.5-7 0z' },
  backPiece: { d: 'M5 20.5V12h2V4.5h10V12h2v8.5z' },
  frontPiece: { d: 'M5 20.5V12h2V4.5h2.5L12 11l2.5-6.5H17V12h2v8.5z' },
  sleevePiece: { d: 'M9 20.5V17L4 5.5h16L15 17v3.5zM9 17h6' },
  bandPiece: { d: 'M3 9h18v6H3zM7.5 9v6M12 9v6M16.5 9v6' },
  swatch: { d: 'M4 4h16v16H4zM8 8l2 2 2-2 2 2 2-2M8 13l2 2 2-2 2 2 2-2' },
  lifeline: { d: 'M3 12c2-3 4-3 6 0s4 3 6 0 4-3 6 0M3 5h18M3 19h18' },
} as const satisfies Record<string, Drawing>;
