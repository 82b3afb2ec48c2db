import type { SeamWay } from '../making-up/joint.ts';
import type { Told, ToldSeam } from '../making-up/told.ts';
import type { Said } from './making-up-sentences.ts';
import type { Title } from './making-up-table.ts';

/** The seam that a title is about. */
const seamOf: Readonly<Partial<Record<Title, ToldSeam>>> = {
  'both shoulders': 'shoulder',
  'one shoulder': 'shoulder',
  'one line': 'raglan',
  raglan: 'raglan',
  'set in': 'armhole',
  side: 'side',
  sleeve: 'sleeve',
};

/** The seams that sentences name. */
export const seamsIn = (said: readonly Said[]): readonly ToldSeam[] =>
  said.flatMap(({ key, values }) => {
    if (key === 'plain') return [values.seam as ToldSeam];
    const seam = key.startsWith(TITLE) ? seamOf[key.slice(TITLE.length) as Title] : undefined;
    return seam ? [seam] : [];
  });

const TITLE = 'title ';

type Draft = { -readonly [K in keyof Told]: Told[K] } & { seams: Set<ToldSeam> };

/** The facts of the sentences in their order: what stands behind a title is told of what it names. */
export function toldBy(said: readonly Said[], beside: Pick<Told, 'leftFirst' | 'topDown'>): Told {
  const told: Draft = { seams: new Set(), ...beside };
  for (const seam of seamsIn(said)) told.seams.add(seam);
  let about: Title | undefined;
  let band = '';
  for (const { key, values } of said) {
    if (key.startsWith(TITLE)) {
      about = key.slice(TITLE.length) as Title;
      band = String(values.band ?? '');
    } else if (key === 'said share')
      told.shares = new Map([...(told.shares ?? []), [band, Number(values.percent)]]);
    else if (key.startsWith('way ')) {
      if (about && seamOf[about] === 'shoulder') told.shoulderWay = key.slice('way '.length) as SeamWay;
    } else tell(told, about, { key, values });
  }
  return told;
}

/** What a sentence with figures adds, unless an earlier one has told it. */
function tell(told: Draft, about: Title | undefined, { key, values }: Said): void {
  const n = (slot: string) => Number(values[slot] ?? 0);
  switch (key) {
    case 'said edges':
    case 'said edges far off':
      edges(told, about, n('first'), n('second'));
      break;
    case 'said underarm':
      told.indentRows ??= 0;
      break;
    case 'said indent':
      told.indentRows ??= n('rows');
      break;
    case 'said top and armhole':
    case 'said top eased in':
      told.top ??= { sleeveMm: n('width'), armholeMm: n('height') };
      break;
    case 'lap placket':
      told.onTop ??= String(values.band);
      break;
    case 'loop back':
    case 'loop raglan':
      told.opening ??= { of: key === 'loop back' ? 'back' : 'raglan', rows: n('rows') };
      break;
    default:
      // what else is said follows from the pieces
      break;
  }
}

function edges(told: Draft, about: Title | undefined, first: number, second: number): void {
  const seam = about && seamOf[about];
  if (seam === 'shoulder') told.shoulder ??= { back: first, front: second };
  if (seam === 'side') told.side ??= { back: first, front: second };
  if (seam === 'sleeve') told.sleeveRows ??= first;
}
