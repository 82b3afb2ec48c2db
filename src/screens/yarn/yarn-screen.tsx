import './yarn.css';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import { changeGarment } from '../../app/garments/change-garment.ts';
import type { Route } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { yarnOf } from '../../knit/yarn/need.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { BallInHand } from './ball-in-hand.tsx';
import { BandFields } from './band-fields.tsx';
import type { ChangeYarn } from './change-yarn.ts';
import { NeedCard } from './need-card.tsx';
import { StripesCard } from './stripes-card.tsx';
import { SwatchFields } from './swatch-fields.tsx';

/** What the garment needs, what the ball in hand is good for, and the figures that both are reckoned from. */
export default function YarnScreen({ route }: { readonly route: Route }) {
  return (
    <GarmentPage route={route} title={say('yarn.title')}>
      {(view) => <Yarn view={view} />}
    </GarmentPage>
  );
}

function Yarn({ view }: { readonly view: GarmentView }) {
  const { garment } = view;
  const change: ChangeYarn = (how) => void changeGarment(garment.id, how);
  const standing = asItStands(view);
  const need = yarnOf(standing, garment.taken);
  return (
    <div class="yarn-page">
      <Shows what="yarn" />
      {need.ok ? (
        <NeedCard need={need.value} view={view} change={change} />
      ) : (
        <Notice kind="fault" title={say('yarn.cannot')}>
          {need.faults.map((fault) => (
            <p key={fault.code}>{saysFault(fault)}</p>
          ))}
        </Notice>
      )}
      <BallInHand view={view} />
      <BandFields garment={garment} change={change} />
      <SwatchFields garment={garment} change={change} />
      <StripesCard view={view} change={change} />
    </div>
  );
}
