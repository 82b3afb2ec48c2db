import { goToRow, lookAtRow } from '../../app/in-hand/knit.ts';
import { goInstead } from '../../app/navigate.ts';
import { type InHand, rowNow } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { hrefToMake } from '../links.ts';

/** The address of a row that was only read would show it again when the page comes back, whatever row is in hand by then. */
const forgetAddress = (make: string) => {
  if (location.hash.includes('?')) goInstead(hrefToMake(make));
};

/** A row is read that is not the one in hand: back to it, or make this one the next. */
export function LookingBar({ now, row }: { readonly now: InHand; readonly row: number }) {
  const place = rowNow.value?.n;
  const back = () => {
    lookAtRow(undefined);
    forgetAddress(now.make);
  };
  return (
    <div class="looking-bar">
      <Shows what="looking-bar" />
      {row > now.place.rows && <Shows what="row-ahead" />}
      <p>
        {place === undefined ? (
          <span class="looking-row">{say('otherRow.lookingDone', { row })}</span>
        ) : (
          <>
            <span class="looking-row">{say('otherRow.looking', { row })} </span>
            {say('otherRow.inHand', { place })}
          </>
        )}
      </p>
      <div class="looking-keys">
        <Button kind="main" onPress={back}>
          {place === undefined ? say('otherRow.backToEnd') : say('otherRow.backToPlace', { row: place })}
        </Button>
        <IconButton
          icon="minus"
          label={say('otherRow.rowBefore')}
          disabled={row <= 1}
          onPress={() => lookAtRow(row - 1)}
        />
        <Button icon="needle" onPress={() => void goToRow(row).then(() => forgetAddress(now.make))}>
          {say('otherRow.placeHere', { row })}
        </Button>
        <IconButton
          icon="plus"
          label={say('otherRow.rowAfter')}
          disabled={row >= now.part.rows.length}
          onPress={() => lookAtRow(row + 1)}
        />
      </div>
    </div>
  );
}
