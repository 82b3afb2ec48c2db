/**
 * Icons of our own on a 24 × 24 field, drawn with a line of 2 like a thread: `d` is stroked, `fill` is filled.
 * Round ends, few bends, nothing smaller than 3 units: they are seen by lamplight.
 */
export interface Drawing {
  readonly d: string;
  readonly fill?: string;
  /** the way it points follows the direction of reading */
  readonly turns?: true;
}

/** Those of the row in hand and of every head and sheet. The others are fetched when the first of them is drawn. */
export const firstDrawings = {
  needle: { d: 'M4 20 17.5 6.5M15.5 4.5l4 4M3 21l1-1M8 10c2-2 5-2 5 0s-3 3-3 5 2 2.5 4 1' },
  undo: { d: 'M9 5 4.5 9.5 9 14M5 9.5h8.5a5 5 0 0 1 0 10H9', turns: true },
  back: { d: 'M14.5 5 7.5 12l7 7', turns: true },
  lock: { d: 'M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3M12 14.5v2' },
  check: { d: 'M4.5 12.5l5 5L19.5 7' },
  cross: { d: 'M6 6l12 12M18 6 6 18' },
  more: {
    d: '',
    fill: 'M12 4a2 2 0 1 1 0 4 2 2 0 0 1 0-4m0 6a2 2 0 1 1 0 4 2 2 0 0 1 0-4m0 6a2 2 0 1 1 0 4 2 2 0 0 1 0-4',
  },
  info: {
    d: 'M12 3.5a8.5 8.5 0 1 1 0 17 8.5 8.5 0 0 1 0-17M12 11.5v5',
    fill: 'M12 6.7a1.3 1.3 0 1 1 0 2.6 1.3 1.3 0 0 1 0-2.6',
  },
  decrease: { d: 'M5 5l7 6.5L19 5M12 11.5V20' },
  increase: { d: 'M12 4v7.5M12 11.5 5 20M12 11.5 19 20' },
  bindOff: { d: 'M4 18h16M4 13c0-4 6-4 6 0M10 13c0-4 6-4 6 0M16 13l4-5' },
  rows: { d: 'M5 6h14M5 12h14M5 18h14' },
} as const satisfies Record<string, Drawing>;
