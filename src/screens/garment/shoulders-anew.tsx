import type { GarmentView } from '../../app/state.ts';
import { rowOutOfReach } from '../../knit/piece/rework/shoulder-anew.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';

/** Shoulders that were planned before anyone asked where the yarn hangs: a new plan is offered, by name. */
export function ShouldersAnew({ view }: { readonly view: GarmentView }) {
  const old = view.pieces.flatMap(({ name, makes }) =>
    makes.flatMap(({ make, parts, places }) =>
      places.flatMap((place) => {
        const part = parts[place.part];
        if (!part || !rowOutOfReach(part, place.rows)) return [];
        return [{ key: place.id, what: saysMake(name, part.name, make, makes.length) }];
      }),
    ),
  );
  if (old.length === 0) return null;
  const actions = old.map(({ key, what }) => (
    <Button key={key} href={`${hrefToMake(key)}/rework?wish=shoulder`}>
      {what}
    </Button>
  ));
  return (
    <Notice kind="warning" title={say('garment.shoulderOld')} actions={actions}>
      {say('garment.shoulderOldHelp')}
    </Notice>
  );
}
