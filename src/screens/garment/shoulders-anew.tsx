import { oldShoulders } from '../../app/garments/old-shoulders.ts';
import type { GarmentView } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

/** Shoulders that were planned before anyone asked where the yarn hangs: a new plan is offered, by name. */
export function ShouldersAnew({ view }: { readonly view: GarmentView }) {
  const old = oldShoulders(view);
  if (old.length === 0) return null;
  const actions = old.map(({ key, piece, make, part }) => (
    <Button key={key} href={`${hrefToMake(key)}/rework?wish=shoulder`}>
      {saysMake(piece.name, part, make.make, piece.recipe)}
    </Button>
  ));
  return (
    <Notice kind="warning" title={say('garment.shoulderOld')} actions={actions}>
      {say('garment.shoulderOldHelp')}
    </Notice>
  );
}
