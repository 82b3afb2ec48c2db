import type { MeasuredGauge } from '../../../measured-gauge.ts';
import type { Build } from './build.ts';
import { type Counts, noCounts } from './notes.ts';

/** What is known before the first line: the knitter's own gauge, needle (mm) and rows counted for lengths. */
interface Begun {
  readonly gauge?: MeasuredGauge | undefined;
  readonly needle?: number | undefined;
  readonly stretches?: Readonly<Record<string, number>> | undefined;
  readonly counts?: Counts;
}

/** A text of which nothing is read yet. */
export function freshBuild({ gauge, needle = 4, stretches = {}, counts = noCounts() }: Begun = {}): Build {
  return {
    gauge,
    gauges: undefined,
    gaugeInPattern: false,
    gaugeBegun: undefined,
    patterns: new Map(),
    pieces: [],
    begun: [],
    namesTaken: new Map(),
    full: false,
    piece: undefined,
    part: undefined,
    defining: undefined,
    heading: undefined,
    needle,
    pending: undefined,
    hole: undefined,
    holes: [],
    holesNext: undefined,
    inHole: false,
    omits: undefined,
    slips: undefined,
    stripes: undefined,
    striped: undefined,
    announced: undefined,
    unreadAt: undefined,
    divides: undefined,
    castOnUnread: false,
    told: undefined,
    title: undefined,
    talk: false,
    line: 1,
    at: 0,
    faults: [],
    meanwhile: [],
    stretches,
    worded: new Map(),
    unread: new WeakMap(),
    unreadLines: new Map(),
    yarnWords: new WeakMap(),
    counts,
    cells: 0,
    later: [],
    recent: [],
  };
}
