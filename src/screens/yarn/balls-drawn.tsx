import { useId } from 'preact/hooks';
import type { Balls } from '../../knit/yarn/balls.ts';
import { saysNumber } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';

/** A garment of more balls than this is drawn as its figures only. */
const MOST = 60;

const R = 10;

/** Ball by ball: what is knitted up is filled, what the rest takes is open, the reserve is hatched. */
export function BallsDrawn({ balls }: { readonly balls: Balls }) {
  const count = Math.round(balls.used + balls.left + balls.reserve);
  const says = (n: number) => saysNumber(n, { digits: 1 });
  const [used, left] = [tenth(balls.used), tenth(balls.left)];
  // as a sum that comes out, in the tenths that are shown
  const words = say('yarn.ballsDrawn', {
    used: says(used),
    left: says(left),
    reserve: says(count - used - left),
    count,
  });
  return (
    <>
      {count <= MOST && (
        <div class="yarn-balls" aria-hidden="true">
          {Array.from({ length: count }, (_, i) => (
            <Ball key={i} used={within(balls.used - i)} needed={within(balls.used + balls.left - i)} />
          ))}
        </div>
      )}
      <p>{words}</p>
    </>
  );
}

const tenth = (n: number): number => Math.round(n * 10) / 10;

const within = (n: number): number => Math.min(1, Math.max(0, n));

/** `used` and `needed`: shares of this ball, from its left. */
function Ball({ used, needed }: { readonly used: number; readonly needed: number }) {
  const id = useId();
  const part = (from: number, to: number, look: string) =>
    to > from && <rect class={look} x={2 * R * from - R} y={-R} width={2 * R * (to - from)} height={2 * R} />;
  return (
    <svg viewBox={`${-R - 1} ${-R - 1} ${2 * R + 2} ${2 * R + 2}`} class="yarn-ball">
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
