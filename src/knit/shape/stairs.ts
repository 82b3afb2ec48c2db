/**
 * A curve in whole stitches. Groups and decreases are worked where a row begins, so an edge can step once in two
 * rows: a *pair* is an RS row and the WS row after it. Targets are where the curve is halfway up each pair, in
 * stitches; stairs are where the knitting is.
 */
export interface Stairs {
  /** stitches, one for each pair */
  readonly at: readonly number[];
  /** the widest distance from the targets, stitches, and the pair (from 0) where it is */
  readonly worst: { readonly stitches: number; readonly pair: number };
}

/** In which order steps of two and more come: big ones first (a neck), last (the top of a cap), both, or as they fall. */
export type StepOrder = 'falling' | 'rising' | 'falling then rising' | 'free';

/**
 * Rounds targets to whole stitches: each stair lies within half a stitch of its target, the last is `end`
 * exactly. Where the steps' order asks for it, runs of groups are laid anew in that order, as near to the targets
 * as the order allows.
 * @param start stitches before the first pair; `end` may lie on either side of it
 * @param endsLevel the curve ends in a level stretch: the last stair is rounded like the others, and what is left is bound off
 */
export function stairsOf(
  targets: readonly number[],
  start: number,
  end: number,
  order: StepOrder = 'free',
  endsLevel = false,
): Stairs {
  const way = end >= start ? 1 : -1;
  const up = targets.map((target) => way * (target - start));
  const total = way * (end - start);
  const rounded = up.map((target, i) =>
    i === up.length - 1 && !endsLevel ? total : clamp(Math.round(target), total),
  );
  const ordered = inOrder(rounded, up, order);
  let worst = { stitches: 0, pair: 0 };
  ordered.forEach((stair, i) => {
    const off = Math.abs(stair - (up[i] ?? 0));
    if (off > worst.stitches) worst = { stitches: off, pair: i };
  });
  return { at: ordered.map((stair) => start + way * stair), worst };
}

const clamp = (n: number, total: number): number => Math.max(0, Math.min(total, n));

function inOrder(
  rounded: readonly number[],
  targets: readonly number[],
  order: StepOrder,
): readonly number[] {
  if (order === 'free') return rounded;
  if (order === 'falling') return falling(rounded, targets);
  if (order === 'rising') return rising(rounded, targets);
  const half = Math.floor(rounded.length / 2);
  const base = rounded[half - 1] ?? 0;
  const above = rising(
    rounded.slice(half).map((n) => n - base),
    targets.slice(half).map((n) => n - base),
  );
  return [...falling(rounded.slice(0, half), targets.slice(0, half)), ...above.map((n) => n + base)];
}

/** Rising steps are falling ones read from the top. */
function rising(rounded: readonly number[], targets: readonly number[]): number[] {
  const total = rounded[rounded.length - 1] ?? 0;
  const turn = (list: readonly number[]): number[] =>
    [0, ...list.slice(0, -1)].reverse().map((n) => total - n);
  const turned = falling(turn(rounded), turn(targets));
  return [
    ...turned
      .slice(0, -1)
      .reverse()
      .map((n) => total - n),
    total,
  ];
}

/**
 * Lays the steps up to the last group of two or more so that none is bigger than the one before it. Where that would
 * lead more than `FAR` away from the curve (a long slant of ones and twos), only the steps that the curve itself makes
 * two and more are laid so, and never more than one stitch away; the twos after them are worked one stitch a row.
 */
function falling(rounded: readonly number[], targets: readonly number[]): readonly number[] {
  const steps = rounded.map((n, i) => n - (rounded[i - 1] ?? 0));
  let run = steps.length;
  while (run > 0 && (steps[run - 1] ?? 0) < 2) run -= 1;
  const whole = laidFalling(rounded, targets, run);
  if (worstOf(whole, targets) <= FAR) return whole;
  const steep = targets.findIndex((target, i) => target - (targets[i - 1] ?? 0) < 2);
  const part = laidFalling(rounded, targets, steep === -1 ? run : Math.min(steep, run));
  return worstOf(part, targets) <= 1 ? part : rounded;
}

/** Stitches off its curve that order is worth. */
const FAR = 0.75;

const worstOf = (stairs: readonly number[], targets: readonly number[]): number =>
  stairs.reduce((worst, stair, i) => Math.max(worst, Math.abs(stair - (targets[i] ?? 0))), 0);

function laidFalling(rounded: readonly number[], targets: readonly number[], run: number): readonly number[] {
  const steps = rounded.slice(0, run).map((n, i) => n - (rounded[i - 1] ?? 0));
  const isInOrder = steps.slice(1).every((step, i) => step <= (steps[i] ?? 0));
  if (run < 2 || isInOrder || steps.some((step) => step < 1)) return rounded;
  return [...nearestFalling(targets.slice(0, run), rounded[run - 1] ?? 0), ...rounded.slice(run)];
}

interface Way {
  readonly worst: number;
  readonly at: readonly number[];
}

/** How far beside the targets a run in order is looked for, stitches. */
const REACH = 3;

/** Of all falling runs of steps that end at `total`, one whose worst distance from the targets is least. */
function nearestFalling(targets: readonly number[], total: number): readonly number[] {
  // ways by where they are and how big their last step was; the better one of two that agree in both goes on
  let ways = new Map<string, { at: number; step: number; way: Way }>();
  ways.set('0', { at: 0, step: Number.POSITIVE_INFINITY, way: { worst: 0, at: [] } });
  targets.forEach((target, i) => {
    const next = new Map<string, { at: number; step: number; way: Way }>();
    for (const { at, step, way } of ways.values()) {
      const from = i === targets.length - 1 ? total : Math.max(at + 1, Math.round(target) - REACH);
      const to = i === targets.length - 1 ? total : Math.min(total, Math.round(target) + REACH);
      for (let n = from; n <= to && n - at <= step; n += 1) {
        if (n <= at) continue;
        const worst = Math.max(way.worst, Math.abs(n - target));
        const key = `${n} ${n - at}`;
        if (worst < (next.get(key)?.way.worst ?? Number.POSITIVE_INFINITY)) {
          next.set(key, { at: n, step: n - at, way: { worst, at: [...way.at, n] } });
        }
      }
    }
    ways = next;
  });
  let best: Way | undefined;
  for (const { way } of ways.values()) if (!best || way.worst < best.worst) best = way;
  return best?.at ?? sortedRun(targets, total);
}

/** Where nothing lies within reach: the plain rounding with its steps sorted. */
function sortedRun(targets: readonly number[], total: number): readonly number[] {
  const stairs = targets.map((target, i) =>
    i === targets.length - 1 ? total : clamp(Math.round(target), total),
  );
  const steps = stairs.map((n, i) => n - (stairs[i - 1] ?? 0)).sort((a, b) => b - a);
  let at = 0;
  return steps.map((step) => (at += step));
}
