import type { Design } from './design.ts';
import { armholes } from './kinds/armholes.ts';
import { garmentKinds } from './kinds/garments.ts';
import {
  factsOfOpening,
  type NeckOpening,
  type NeckOpeningFacts,
  neckOpenings,
} from './kinds/neck-openings.ts';
import { necks } from './kinds/necks.ts';

type Asked = Pick<Design, 'kind' | 'armhole' | 'neck'>;

/** Openings that a design can have: a raglan has no shoulders, and what has no neck of its own is not parted below it. */
export const possibleOpenings = (design: Asked): readonly NeckOpening[] =>
  garmentKinds[design.kind].open ? ['none'] : neckOpenings.filter((name) => canOpen(design, name));

function canOpen({ armhole, neck }: Asked, name: NeckOpening): boolean {
  const { partsBack, partsFront, opensRaglan, shoulders } = factsOfOpening(name);
  const { toNeck } = armholes[armhole];
  return (
    (!partsBack || (!toNeck && neck.backDepthMm > 0)) &&
    // a point and corners have mitres where the bands would begin
    (!partsFront || (neck.depthMm > 0 && necks[neck.shape].mitre === 'none')) &&
    (!opensRaglan || toNeck) &&
    (shoulders === 0 || !toNeck)
  );
}

/** How the neck opens; as one without an opening where the design cannot have the one that it names. */
export function openingOf(design: Asked): NeckOpeningFacts {
  const name = design.neck.opening ?? 'none';
  return factsOfOpening(possibleOpenings(design).includes(name) ? name : 'none');
}
