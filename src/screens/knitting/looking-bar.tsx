import { goToRow, lookAtRow } from '../../app/in-hand/knit.ts';
import { type InHand, rowNow } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { say } from '../../words/say.ts';

/** A row is read that is not the one in hand: back to it, or make this one the next. */
export function LookingBar({ now, row }: { readonly now: InHand; readonly row: number }) {
  const place = rowNow.value?.n;
  return (
    <div class="looking-bar">
      <p>
        {place === undefined ? say('otherRow.lookingDone', { row }) : say('otherRow.looking', { row, place })}
      </p>
      <div class="looking-keys">
        <Button kind="main" onPress={() => lookAtRow(undefined)}>
          {place === undefined ? say('otherRow.backToEnd') : say('otherRow.backToPlace', { row: place })}
        </Button>
        <IconButton
          icon="minus"
          label={say('otherRow.rowBefore')}
          disabled={row <= 1}
          onPress={() => lookAtRow(row - 1)}
        />
        <Button icon="needle" onPress={() => void goToRow(row)}>
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
