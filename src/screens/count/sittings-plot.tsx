import type { Sitting } from '../../progress/sittings.ts';
import { say } from '../../words/say.ts';

const MOST = 30;
const HEIGHT = 100;
const BAR = 8;
const STEP = 10;

/** A bar for each sitting, as high as its rows, the newest at the end. */
export function SittingsPlot({ sittings }: { readonly sittings: readonly Sitting[] }) {
  const shown = sittings.slice(-MOST);
  const most = Math.max(1, ...shown.map(({ rows }) => rows));
  const label = `${say('pace.sittingsPlot', { count: shown.length })}: ${shown.map(({ rows }) => rows).join(', ')}`;
  return (
    <svg
      class="count-plot"
      viewBox={`0 0 ${MOST * STEP} ${HEIGHT}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={label}
    >
      {shown.map(({ from, rows }, i) => {
        const height = Math.max(2, (rows / most) * HEIGHT);
        return (
          <rect
            key={from}
            x={(MOST - shown.length + i) * STEP + 1}
            y={HEIGHT - height}
            width={BAR}
            height={height}
          />
        );
      })}
    </svg>
  );
}
