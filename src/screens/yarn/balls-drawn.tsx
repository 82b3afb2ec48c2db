import { useId } from 'preact/hooks';
import type { Balls } from '../../knit/yarn/balls.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** A garment of more balls than this is drawn as its figures only. */
const MOST = 60;

const R = 10;

export interface BallsDrawnProps {
  readonly balls: Balls;
  /** balls that she has, where she says so */
  readonly atHand: number | undefined;
}

/** Ball by ball: what is knitted up is filled, what the rest takes is tinted, the reserve is open; and which is which. */
export function BallsDrawn({ balls, atHand }: BallsDrawnProps) {
  const count = Math.round(balls.used + balls.left + balls.reserve);
  const says = (n: number) => saysNumber(n, { digits: 1 });
  const [used, left] = [tenth(balls.used), tenth(balls.left)];
  // as a sum that comes out, in the tenths that are shown
  const key = [
    ['yarn.ballsUsed', used, 1, 1],
    ['yarn.ballsLeft', left, 0, 1],
    ['yarn.ballsReserve', count - used - left, 0, 0],
  ] as const;
  return (
    <>
      {count <= MOST && (
        <div class="yarn-balls" aria-hidden="true">
          {Array.from({ length: count }, (_, i) => (
            <Ball key={i} used={within(balls.used - i)} needed={within(balls.used + balls.left - i)} />
          ))}
        </div>
      )}
      <ul role="list" class="yarn-key">
        {key.map(([words, n, ofUsed, ofNeeded]) => (
          <li key={words}>
            <Ball used={ofUsed} needed={ofNeeded} />
            {say(words, { n: says(n) })}
          </li>
        ))}
        <li>{say('yarn.ballsSum', { count })}</li>
      </ul>
      {atHand !== undefined && <p>{say('yarn.ballsAtHand', { count: atHand })}</p>}
    </>
  );
}

export const tenth = (n: number): number => Math.round(n * 10) / 10;

const within = (n: number): number => Math.min(1, Math.max(0, n));

/** `used` and `needed`: shares of this ball, from its left. */
function Ball({ used, needed }: { readonly used: number; readonly needed: number }) {
  const id = useId();
  const part = (from: number, to: number, look: string) =>
    to > from && <rect class={look} x={2 * R * from - R} y={-R} width={2 * R * (to - from)} height={2 * R} />;
  return (
    <svg viewBox={`${-R - 1} ${-R - 1} ${2 * R + 2} ${2 * R + 2}`} class="yarn-ball" aria-hidden="true">
      <clipPath id={id}>
        <circle r={R} />
      </clipPath>
      <g clip-path={`url(#${id})`}>
        {part(0, used, 'ball-used')}
        {part(used, needed, 'ball-left')}
        {part(needed, 1, 'ball-reserve')}
      </g>
      <circle class="ball-edge" r={R} />
      <path class="ball-edge" d="M-8 -6Q0 -2 8 -6M-9.5 0Q0 5 9.5 0" />
    </svg>
  );
}
