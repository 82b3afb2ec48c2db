import { useState } from 'preact/hooks';
import type { PartForm } from '../../knit/piece/form/form.ts';
import { Button } from '../../ui/button/button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import type { PartHand } from './changes.ts';
import type { SaysAt } from './says-here.ts';
import { SplitSheet } from './split-sheet.tsx';

interface EndFieldsProps {
  readonly hand: PartHand;
  readonly part: PartForm;
  readonly says: SaysAt;
  readonly left: number | undefined;
}

/** What becomes of the stitches that are left. */
export function EndFields({ hand, part, says, left }: EndFieldsProps) {
  const [splitting, setSplitting] = useState(false);
  const wrong = says('end');
  return (
    <div class="edit-stack" {...(wrong ? { 'data-wrong': true } : {})}>
      <p class="edit-end-count">
        {say('editor.endsWith', { stitches: left === undefined ? '?' : saysStitches(left) })}
      </p>
      <Choice
        label={say('editor.ends')}
        value={part.end}
        options={[
          { value: 'bind off', label: say('editor.endBindOff') },
          { value: 'hold', label: say('editor.endHold') },
          { value: 'split', label: say('editor.endSplit') },
        ]}
        onChange={(end) => hand.type({ end }, 'end')}
      />
      {wrong && <p class="edit-wrong">{wrong}</p>}
      <Button icon="notch" onPress={() => setSplitting(true)}>
        {say('editor.splitNow')}
      </Button>
      {splitting && <SplitSheet hand={hand} part={part} left={left} onClose={() => setSplitting(false)} />}
    </div>
  );
}
