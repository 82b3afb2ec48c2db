import { asItStands } from '../../app/garments/as-it-stands.ts';
import { hrefTo } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { makingUpOf } from '../../knit/making-up/making-up.ts';
import { Button } from '../../ui/button/button.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { say } from '../../words/say.ts';
import { TookLine } from '../took-line.tsx';

/** The last row of the last piece is worked: what it took, and whether it is made up. */
export default function AllDone({ view }: { readonly view: GarmentView }) {
  const { garment, pieces } = view;
  const places = pieces.flatMap(({ makes }) => makes.flatMap((make) => make.places));
  const { steps } = makingUpOf(asItStands(view));
  const ticked = steps.filter(({ id }) => garment.ticked?.includes(id)).length;
  const of = { count: ticked, all: steps.length };
  return (
    <section class="all-done">
      <h2>
        <Icon name="check" size="l" />
        {say(ticked === steps.length ? 'partEnd.garmentFinished' : 'partEnd.garmentKnitted')}
      </h2>
      <TookLine garment={garment.id} places={places} />
      {ticked < steps.length && (
        <p>{ticked === 0 ? say('partEnd.notMadeUp') : say('partEnd.madeUpSoFar', of)}</p>
      )}
      <Button kind="quiet" icon="history" href={hrefTo('record', { garment: garment.id })}>
        {say('partEnd.toRecord')}
      </Button>
    </section>
  );
}
