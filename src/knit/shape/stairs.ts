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
  if (whole && worstOf(whole, targets) <= FAR) return whole;
  const steep = targets.findIndex((target, i) => target - (targets[i - 1] ?? 0) < 2);
  const part = laidFalling(rounded, targets, steep === -1 ? run : Math.min(steep, run));
  return part && worstOf(part, targets) <= 1 ? part : rounded;
}

/** Stitches off its curve that order is worth. */
const FAR = 0.75;

const worstOf = (stairs: readonly number[], targets: readonly number[]): number =>
  stairs.reduce((worst, stair, i) => Math.max(worst, Math.abs(stair - (targets[i] ?? 0))), 0);

/** Undefined where the steps of the run cannot be put in order within a stitch of their targets. */
function laidFalling(
  rounded: readonly number[],
  targets: readonly number[],
  run: number,
): readonly number[] | undefined {
  const steps = rounded.slice(0, run).map((n, i) => n - (rounded[i - 1] ?? 0));
  const isInOrder = steps.slice(1).every((step, i) => step <= (steps[i] ?? 0));
  if (isInOrder || steps.some((step) => step < 1)) return rounded;
  const laid = nearestFalling(targets.slice(0, run), rounded[run - 1] ?? 0);
  return laid && [...laid, ...rounded.slice(run)];
}

interface Way {
  /** where it is, and how big its last step was */
  readonly stair: number;
  readonly step: number;
  readonly worst: number;
  readonly at: readonly number[];
}

/**
 * Of all falling runs of steps that end at `total`, one whose worst distance from the targets is least; undefined
 * where all but the last stair cannot lie within a stitch of their targets.
 */
function nearestFalling(targets: readonly number[], total: number): readonly number[] | undefined {
  let ways: readonly Way[] = [{ stair: 0, step: Number.POSITIVE_INFINITY, worst: 0, at: [] }];
  for (const [i, target] of targets.entries()) {
    // of two ways that agree in where they are and in their last step the better one goes on
    const next = new Map<string, Way>();
    for (const { stair: before, step: stepBefore, worst: worstBefore, at } of ways) {
      for (const stair of i === targets.length - 1 ? [total] : nearest(target)) {
        const step = stair - before;
        if (step < 1 || step > stepBefore) continue;
        const worst = Math.max(worstBefore, Math.abs(stair - target));
        const key = `${stair} ${step}`;
        if (worst < (next.get(key)?.worst ?? Number.POSITIVE_INFINITY))
          next.set(key, { stair, step, worst, at: [...at, stair] });
      }
    }
    ways = [...next.values()];
  }
  return ways.reduce<Way | undefined>(
    (best, way) => (best && best.worst <= way.worst ? best : way),
    undefined,
  )?.at;
}

/** Those whole stitches among which all lie that are within one of a target. */
const nearest = (target: number): number[] => [-1, 0, 1].map((by) => Math.round(target) + by);
