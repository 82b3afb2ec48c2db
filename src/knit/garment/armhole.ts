import type { Gauge } from '../gauge.ts';
import type { Curve } from '../shape/curve.ts';
import { type KnittedEdge, knitEdge, uprightEdge } from '../shape/outline.ts';
import { raglanCurve, setInCurve, slantCurve } from './curves.ts';
import type { Design } from './design.ts';
import type { ArmholeKind } from './kinds/armholes.ts';
import type { PanelCounts } from './panel-counts.ts';
import { knitRaglan } from './raglan.ts';

interface Armhole {
  readonly curve: Curve;
  readonly knitted: KnittedEdge;
}

/** Of each kind the curve through its whole-stitch corners, and how it is knitted; all else of it stands in `kinds/armholes.ts`. */
const kinds: Readonly<
  Record<ArmholeKind, (counts: PanelCounts, design: Pick<Design, 'tapers' | 'underarmMm'>) => Armhole>
> = {
  drop: ({ underarm, pairs, gauge }) => ({
    curve: slantCurve(mm(underarm / 2, gauge), mm(underarm / 2, gauge), height(pairs.armhole, gauge)),
    knitted: uprightEdge(pairs.armhole, underarm / 2),
  }),
  indented: ({ underarm, across, step, pairs, gauge }) => {
    const curve = raglanCurve(
      mm(underarm / 2, gauge),
      mm(step, gauge),
      mm(across / 2, gauge),
      height(pairs.armhole, gauge),
      0,
    );
    const upright = uprightEdge(pairs.armhole, across / 2);
    return { curve, knitted: { ...upright, steps: step > 0 ? [{ pair: 0, by: -step, as: 'group' }] : [] } };
  },
  'set-in': (counts, { underarmMm }) =>
    underarmMm === undefined ? setIn(counts) : boundOffFirst(counts, underarmMm),
  raglan: ({ underarm, neck, step, pairs, gauge }, { tapers }) =>
    knitRaglan({ gauge, pairs: pairs.armhole, start: underarm / 2, step, end: neck / 2, tapers }),
};

export const knitArmhole = (design: Design, counts: PanelCounts): Armhole =>
  kinds[design.armhole](counts, design);

function setIn({ underarm, across, pairs, gauge }: PanelCounts, levelMm?: number): Armhole {
  const [low, high] = [mm(underarm / 2, gauge), mm(across / 2, gauge)];
  const curve = setInCurve(low, high, height(pairs.armhole, gauge), levelMm);
  const wish = { curve, gauge, pairs: pairs.armhole, start: underarm / 2, end: across / 2 };
  return { curve, knitted: knitEdge({ ...wish, order: 'falling' }) };
}

/** The armhole that binds off so much first: the rows of the curve take some of it, so its level part is shorter. */
function boundOffFirst(counts: PanelCounts, underarmMm: number): Armhole {
  const wanted = Math.round((underarmMm * counts.gauge.stitches) / 100);
  for (let level = wanted; level > 0; level -= 1) {
    const made = setIn(counts, mm(level, counts.gauge));
    const first = made.knitted.steps[0];
    if (first?.pair === 0 && -first.by <= wanted) return made;
  }
  return setIn(counts, 0);
}

const mm = (stitches: number, gauge: Gauge): number => (stitches * 100) / gauge.stitches;
const height = (pairs: number, gauge: Gauge): number => (pairs * 200) / gauge.rows;
