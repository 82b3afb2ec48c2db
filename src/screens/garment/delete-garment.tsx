import { useState } from 'preact/hooks';
import { deleteGarment } from '../../app/garments/open-garments.ts';
import { goInstead } from '../../app/navigate.ts';
import { hrefTo } from '../../app/routes.ts';
import type { GarmentView } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';

/** Asks first, and says what goes with it. */
export function DeleteGarment({ view }: { readonly view: GarmentView }) {
  const [open, setOpen] = useState(false);
  const [failed, setFailed] = useState(false);
  const { garment, pieces } = view;
  const rows = pieces
    .flatMap((piece) => piece.makes.flatMap((make) => make.places))
    .reduce((sum, p) => sum + p.rows, 0);
  const close = () => setOpen(false);
  const remove = async () => {
    const done = await deleteGarment(garment.id);
    setFailed(!done);
    if (done) goInstead(hrefTo('workbasket'));
  };
  const actions = (
    <>
      <Button onPress={close}>{say('garment.deleteNo')}</Button>
      <Button kind="danger" icon="trash" onPress={() => void remove()}>
        {say('garment.deleteYes')}
      </Button>
    </>
  );
  return (
    <>
      <Button kind="danger" icon="trash" onPress={() => setOpen(true)}>
        {say('garment.delete')}
      </Button>
      <Sheet
        open={open}
        title={say('garment.deleteTitle', { garment: garment.name })}
        actions={actions}
        onClose={close}
      >
        <p>{say('garment.deleteBody', { count: rows })}</p>
        {failed && (
          <Notice kind="fault" live>
            {say('garment.deleteFailed')}
          </Notice>
        )}
      </Sheet>
    </>
  );
}
