/**
 * Icons of our own on a 24 × 24 field, drawn with a line of 2 like a thread: `d` is stroked, `fill` is filled.
 * Round ends, few bends, nothing smaller than 3 units: they are seen by lamplight.
 */
interface Drawing {
  readonly d: string;
  readonly fill?: string;
  /** the way it points follows the direction of reading */
  readonly turns?: true;
}

const table = {
  yarn: {
    d: 'M12 3.5a8 8 0 1 1 0 16 8 8 0 0 1 0-16M6 7.5c5 0 9.5 4 11.5 9.5M9.5 4.5c4 1 8 4.5 9.5 9M4.5 12.5c4 0 6.5 2 8.5 6.5M15 18.5c1.5 2 4 2.5 6.5 1.5',
  },
  needle: { d: 'M4 20 17.5 6.5M15.5 4.5l4 4M3 21l1-1M8 10c2-2 5-2 5 0s-3 3-3 5 2 2.5 4 1' },
  undo: { d: 'M9 5 4.5 9.5 9 14M5 9.5h8.5a5 5 0 0 1 0 10H9', turns: true },
  back: { d: 'M14.5 5 7.5 12l7 7', turns: true },
  onward: { d: 'M9.5 5l7 7-7 7', turns: true },
  lock: { d: 'M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3M12 14.5v2' },
  unlock: { d: 'M6 11h12v9H6zM8.5 11V7.5a3.5 3.5 0 0 1 6.8-1.2M12 14.5v2' },
  moon: { d: 'M19.5 14.5A8 8 0 1 1 9.5 4.5a6.5 6.5 0 0 0 10 10z' },
  sun: {
    d: 'M12 8a4 4 0 1 1 0 8 4 4 0 0 1 0-8M12 2.5v2M12 19.5v2M2.5 12h2M19.5 12h2M5.3 5.3l1.4 1.4M17.3 17.3l1.4 1.4M5.3 18.7l1.4-1.4M17.3 6.7l1.4-1.4',
  },
  speaker: { d: 'M4 9.5h3.5L12 5.5v13l-4.5-4H4zM15.5 9a4.5 4.5 0 0 1 0 6M18 6.5a8 8 0 0 1 0 11' },
  check: { d: 'M4.5 12.5l5 5L19.5 7' },
  cross: { d: 'M6 6l12 12M18 6 6 18' },
  plus: { d: 'M12 5v14M5 12h14' },
  minus: { d: 'M5 12h14' },
  more: {
    d: '',
    fill: 'M12 4a2 2 0 1 1 0 4 2 2 0 0 1 0-4m0 6a2 2 0 1 1 0 4 2 2 0 0 1 0-4m0 6a2 2 0 1 1 0 4 2 2 0 0 1 0-4',
  },
  warning: { d: 'M12 4 21 19.5H3zM12 10v4', fill: 'M12 15.7a1.2 1.2 0 1 1 0 2.4 1.2 1.2 0 0 1 0-2.4' },
  fault: {
    d: 'M8.5 3.5h7l5 5v7l-5 5h-7l-5-5v-7zM12 8v5',
    fill: 'M12 14.7a1.3 1.3 0 1 1 0 2.6 1.3 1.3 0 0 1 0-2.6',
  },
  note: {
    d: 'M12 3.5a8.5 8.5 0 1 1 0 17 8.5 8.5 0 0 1 0-17M12 11.5v5',
    fill: 'M12 6.7a1.3 1.3 0 1 1 0 2.6 1.3 1.3 0 0 1 0-2.6',
  },
  notch: { d: 'M5 3.5h14v17H5', fill: 'M4 6.5 11 12l-7 5.5z' },
  decrease: { d: 'M5 5l7 6.5L19 5M12 11.5V20' },
  increase: { d: 'M12 4v7.5M12 11.5 5 20M12 11.5 19 20' },
  photo: { d: 'M3.5 7.5h4l1.5-2.5h6l1.5 2.5h4v11.5h-17zM12 9.5a3.5 3.5 0 1 1 0 7 3.5 3.5 0 0 1 0-7' },
  print: { d: 'M7 9V4h10v5M7 17H4V9h16v8h-3M7 14h10v6H7z' },
  share: { d: 'M12 14V3.5M8 7l4-3.5L16 7M7 11H5v9.5h14V11h-2' },
  settings: {
    d: 'M4 7h9M18 7h2M15.5 4.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5M4 17h2M11 17h9M8.5 14.5a2.5 2.5 0 1 1 0 5 2.5 2.5 0 0 1 0-5',
  },
  edit: { d: 'M4 20l1-4.5L16 4.5l3.5 3.5L8.5 19zM13.5 7l3.5 3.5' },
  count: { d: 'M4 8c0 4 3 4 3 0s3-4 3 0-0 4 2 4 2 0 2-4 3-4 3 0 3 4 3 0M4 18h16' },
  find: { d: 'M10.5 4a6.5 6.5 0 1 1 0 13 6.5 6.5 0 0 1 0-13M15.3 15.3 20.5 20.5' },
  history: { d: 'M4 5v5h5M4.5 10a8 8 0 1 1-.5 3.5M12 8v4.5l3 2' },
  flag: { d: 'M6 21V4c4-2 7 2 12 0v9c-5 2-8-2-12 0' },
  download: { d: 'M12 4v11M8 11.5l4 4 4-4M5 20h14' },
  trash: { d: 'M5 7h14M9 7V4h6v3M7 7l1 13h8l1-13' },
  garment: { d: 'M8.5 4 3 8l2.5 4L8 10.5V20h8v-9.5l2.5 1.5L21 8l-5.5-4c-1.5 2.5-5.5 2.5-7 0z' },
  swatch: { d: 'M4 4h16v16H4zM8 8l2 2 2-2 2 2 2-2M8 13l2 2 2-2 2 2 2-2' },
  lifeline: { d: 'M3 12c2-3 4-3 6 0s4 3 6 0 4-3 6 0M3 5h18M3 19h18' },
  hand: {
    d: 'M8 12V6.5a1.5 1.5 0 0 1 3 0V11M11 10.5V4.5a1.5 1.5 0 0 1 3 0v6M14 10.5V6.5a1.5 1.5 0 0 1 3 0V14c0 4-2 6.5-5.5 6.5-3 0-4.5-1.5-6-4.5l-1.5-3c-.600-1.6 1.4-2.6 2.3-1.3L8 14',
  },
} as const satisfies Record<string, Drawing>;

export type IconName = keyof typeof table;

export const drawings: Readonly<Record<IconName, Drawing>> = table;

export const iconNames = Object.keys(table) as readonly IconName[];
