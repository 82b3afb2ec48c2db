import { type Lie, laidRows } from './lie.ts';
import { slipRates } from './rates.ts';
import { oneEdgeOnly, shapingDoubled, shapingMissed } from './shaping-slips.ts';
import { changed, FARTHEST, repeated, type Slip, type SlipCause, type Stretch, shapedRows } from './slip.ts';

/** Everything that may have happened in the stretch. */
export const slipsIn = (stretch: Stretch): Slip[] => [
  ...placesOff(stretch),
  ...shapingMissed(stretch),
  ...shapingDoubled(stretch),
  ...oneEdgeOnly(stretch),
  ...spreadOff(stretch),
  ...strayStitches(stretch),
  ...groupsOff(stretch),
  ...castOnOff(stretch),
];

function placesOff({ part, from, latest, to, landmark }: Stretch): Slip[] {
  const at = (rows: number) => (rows === 0 ? part.start : (part.rows[rows - 1]?.after ?? 0));
  const out: Slip[] = [];
  const place = (cause: SlipCause, rows: number, times: number): void => {
    out.push({
      cause,
      rows: [rows],
      times,
      by: at(rows) - at(to),
      weight: repeated(slipRates.tap, times) * (latest - from),
      lie: () => ({ rows: laidRows(part, landmark, rows), trace: 'none' }),
    });
  };
  for (let j = 1; j <= FARTHEST; j += 1) {
    if (to - j >= from) place('place ahead', to - j, j);
    if (to + j <= part.rows.length) place('place behind', to + j, j);
  }
  return out;
}

function spreadOff(stretch: Stretch): Slip[] {
  const spread = shapedRows(stretch).filter(({ laid }) => Math.abs(laid.across) > 2);
  return spread.flatMap(({ n: row, laid: { across } }) => {
    const off = (cause: SlipCause, times: number, by: number, weight: number): Slip => ({
      cause,
      rows: [row],
      times,
      by,
      weight,
      lie: () => changed(stretch, (n, laid) => [n === row ? { ...laid, across: across + by } : laid]),
    });
    const way = Math.sign(across);
    const most = Math.abs(across) - 1;
    const short = Array.from({ length: most }, (_, i) =>
      off('spread short', i + 1, -way * (i + 1), slipRates.spreadShort / 2 ** (i + 1)),
    );
    const over = [1, 2, 3].map((m) => off('spread over', m, way * m, slipRates.spreadOver / 2 ** m));
    return [...short, ...over];
  });
}

function strayStitches(stretch: Stretch): Slip[] {
  const rows = stretch.latest - stretch.from;
  const stray = (cause: SlipCause, way: 1 | -1, trace: Lie['trace'], rate: number): Slip[] =>
    [1, 2, 3].map((times) => ({
      cause,
      rows: [],
      times,
      by: way * times,
      weight: repeated(rate, times) * rows,
      lie: () => changed(stretch, (_, laid) => [laid], trace),
    }));
  return rows <= 0
    ? []
    : [
        ...stray('stitch dropped', -1, 'ladder', slipRates.dropped),
        ...stray('worked together', -1, 'joined', slipRates.together),
        ...stray('stray yarn-over', 1, 'hole', slipRates.yarnOver),
      ];
}

/** All the rows above it are as planned; only its edge tells. */
const castOnOff = (stretch: Stretch): Slip[] =>
  stretch.castOn
    ? [-3, -2, -1, 1, 2, 3].map((by) => ({
        cause: 'cast-on miscounted',
        rows: [],
        times: Math.abs(by),
        by,
        weight: repeated(slipRates.castOn / 2, Math.abs(by)),
        lie: () => ({ ...changed(stretch, (_, laid) => [laid]), castOn: by }),
      }))
    : [];

function groupsOff(stretch: Stretch): Slip[] {
  const groups = shapedRows(stretch).filter(({ laid }) => laid.group !== 0);
  return groups.flatMap(({ n: row, laid: { group } }) =>
    [-2, -1, 1, 2]
      .filter((by) => Math.abs(by) < Math.abs(group))
      .map(
        (by): Slip => ({
          cause: 'group miscounted',
          rows: [row],
          times: Math.abs(by),
          by,
          weight: repeated(slipRates.group / 2, Math.abs(by)),
          lie: () => changed(stretch, (n, laid) => [n === row ? { ...laid, group: group + by } : laid]),
        }),
      ),
  );
}
