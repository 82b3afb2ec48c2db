import type { Flow } from '../say/flow.ts';

/** More than a text says again; keeps '200 times' upon '200 times' from filling the memory. */
const MOST_AGAIN = 4000;

/**
 * The flow with what stands between a star and its 'repeat from *' said again where that stands. A repeat whose star is
 * not there, or lies before the heading of another piece, stays as it is and is told.
 */
export function sayAgain(flow: readonly Flow[]): readonly Flow[] {
  if (!flow.some(isRepeat)) return flow;
  const out: Flow[] = [];
  const stars = new Map<1 | 2, { readonly from: number; to?: number }>();
  let left = MOST_AGAIN;
  for (const [i, one] of flow.entries()) {
    const said = one.is === 'said' ? one.said.statement : undefined;
    if (said?.is === 'heading' && said.piece) stars.clear();
    const sign = said?.is === 'star' ? 1 : said?.is === 'stars' && !said.three ? 2 : undefined;
    // '… k to end.* Rep from * to *': the second closes what the first began
    const open = sign && stars.get(sign);
    const closes = open && repeats(flow[i + 1], sign);
    if (sign !== undefined && !closes) stars.set(sign, { from: out.length + 1 });
    // between '**' and '**' they are worked again as often as it is said
    else if (open && sign === 2) open.to = out.length;
    const range = said?.is === 'repeat from stars' ? stars.get(said.stars) : undefined;
    const again = range === undefined ? [] : out.slice(range.from, range.to).filter((each) => !isStar(each));
    if (
      one.is !== 'said' ||
      said?.is !== 'repeat from stars' ||
      again.length === 0 ||
      again.length * said.times > left
    ) {
      out.push(one);
      continue;
    }
    left -= again.length * said.times;
    for (let i = 0; i < said.times; i += 1) for (const each of again) out.push(saidHere(each, one));
    if (range?.to === undefined) stars.delete(said.stars);
    const last = out.at(-1) as Flow;
    if (last.is === 'said' && one.said.stated !== undefined)
      out[out.length - 1] = { ...last, said: { ...last.said, stated: one.said.stated } };
  }
  return out;
}

const isRepeat = (one: Flow): boolean => one.is === 'said' && one.said.statement.is === 'repeat from stars';

const repeats = (one: Flow | undefined, stars: 1 | 2): boolean =>
  one?.is === 'said' && one.said.statement.is === 'repeat from stars' && one.said.statement.stars === stars;

const isStar = (one: Flow): boolean =>
  one.is === 'said' && (one.said.statement.is === 'star' || one.said.statement.is === 'stars');

/** The counts stated in it held the first time. */
function saidHere(one: Flow, here: Extract<Flow, { is: 'said' }>): Flow {
  const { line } = here;
  if (one.is === 'own words') {
    const { stated: _, ...rest } = one;
    return { ...rest, line, from: here.said.line };
  }
  const { stated: _, ...said } = one.said;
  return { ...one, line, said: { ...said, line: here.said.line, column: here.said.column } };
}
