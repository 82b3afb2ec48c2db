import { useState } from 'preact/hooks';
import { type SplitWish, splitPart } from '../../knit/piece/form/edit-parts.ts';
import type { PartForm } from '../../knit/piece/form/form.ts';
import { Button } from '../../ui/button/button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { changePiece, type PartHand } from './changes.ts';
import { TypedNumber } from './typed-number.tsx';

interface SplitSheetProps {
  readonly hand: PartHand;
  readonly part: PartForm;
  /** stitches on the needle at the part's end */
  readonly left: number | undefined;
  readonly onClose: () => void;
}

const freshWish = (left: number | undefined): SplitWish => {
  const half = left === undefined ? '' : String(Math.floor(left / 2));
  return {
    right: { name: say('editor.rightName'), stitches: half },
    middle: {
      name: say('editor.middleName'),
      stitches: left === undefined ? '0' : String(left % 2),
      end: 'hold',
    },
    left: { name: say('editor.leftName'), stitches: half },
  };
};

/** Splits a part into a right and a left one, with or without stitches between that are bound off or held. */
export function SplitSheet({ hand, part, left, onClose }: SplitSheetProps) {
  const [wish, setWish] = useState(() => freshWish(left));
  const counts = [wish.right, wish.middle, wish.left].map(({ stitches }) => Number(stitches));
  const sum = counts.reduce((total, count) => total + count, 0);
  const fits =
    counts.every((count) => Number.isInteger(count) && count >= 0) && (left === undefined || sum === left);
  const set = <Side extends keyof SplitWish>(side: Side, change: Partial<SplitWish[Side]>) =>
    setWish({ ...wish, [side]: { ...wish[side], ...change } });
  const split = () => {
    onClose();
    changePiece(
      hand.piece,
      (old) => splitPart(old, hand.part, wish),
      say('editor.changed', { name: part.name }),
    );
  };
  const side = (name: 'left' | 'right', label: string) => (
    <fieldset class="edit-group">
      <legend>{label}</legend>
      <TextField
        label={say('editor.name')}
        value={wish[name].name}
        onInput={(typed) => set(name, { name: typed })}
      />
      <TypedNumber
        label={say('editor.stitches')}
        typed={wish[name].stitches}
        onTyped={(stitches) => set(name, { stitches })}
      />
    </fieldset>
  );
  return (
    <Sheet
      open
      title={say('editor.splitTitle', { part: part.name })}
      onClose={onClose}
      actions={
        <Button kind="main" wide disabled={!fits} describedBy="edit-split-sum" onPress={split}>
          {say('editor.splitDo')}
        </Button>
      }
    >
      <div class="edit-stack">
        {left !== undefined && <p>{say('editor.splitHave', { stitches: saysStitches(left) })}</p>}
        <p class="edit-soft">{say('editor.sidesAsWorn')}</p>
        {side('right', say('editor.rightPart'))}
        <fieldset class="edit-group">
          <legend>{say('editor.middlePart')}</legend>
          <TypedNumber
            label={say('editor.middleStitches')}
            typed={wish.middle.stitches}
            onTyped={(stitches) => set('middle', { stitches })}
          />
          {Number(wish.middle.stitches) > 0 && (
            <>
              <TextField
                label={say('editor.name')}
                value={wish.middle.name}
                onInput={(name) => set('middle', { name })}
              />
              <Choice
                label={say('editor.middleEnd')}
                value={wish.middle.end === 'bind off' ? 'bind off' : 'hold'}
                options={[
                  { value: 'bind off', label: say('editor.endBindOff') },
                  { value: 'hold', label: say('editor.endHold') },
                ]}
                onChange={(end) => set('middle', { end })}
              />
            </>
          )}
        </fieldset>
        {side('left', say('editor.leftPart'))}
        <p id="edit-split-sum" class={fits ? 'edit-right' : 'edit-wrong'} role="status">
          {say('editor.splitSum', { sum: Number.isFinite(sum) ? sum : '?', have: left ?? '?' })}
        </p>
      </div>
    </Sheet>
  );
}
