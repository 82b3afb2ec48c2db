import type { Side } from '../../knit/row/step.ts';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';
import { ShapingFields, type ShapingFieldsProps } from './shaping-fields.tsx';
import { shapingKinds } from './shaping-kinds.ts';
import { ShapingSum } from './shaping-sum.tsx';

interface ShapingEntryProps extends ShapingFieldsProps {
  /** of the section's row 1 */
  readonly side: Side;
  readonly onRemove: () => void;
}

/** One entry of a section's shaping, said as a knitter says it, with what it comes to. */
export function ShapingEntry({ entry, side, says, onChange, onRemove }: ShapingEntryProps) {
  const kind = shapingKinds.find(([name]) => name === entry.kind);
  const wrong = says('');
  return (
    <fieldset class="edit-shaping" {...(wrong ? { 'data-wrong': true } : {})}>
      <legend>{kind && say(kind[1])}</legend>
      <div class="edit-stack">
        <ShapingFields entry={entry} says={says} onChange={onChange} />
        <ShapingSum entry={entry} side={side} />
        {wrong && <Notice kind="warning">{wrong}</Notice>}
        <div class="edit-shaping-foot">
          <IconButton icon="trash" label={say('editor.removeShaping')} onPress={onRemove} />
        </div>
      </div>
    </fieldset>
  );
}
