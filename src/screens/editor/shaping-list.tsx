import { useState } from 'preact/hooks';
import type { SectionForm, ShapingForm } from '../../knit/piece/form/form.ts';
import { freshShaping, type ShapingKind } from '../../knit/piece/form/fresh.ts';
import { removed, replaced } from '../../knit/piece/form/list.ts';
import type { Side } from '../../knit/row/step.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { say } from '../../words/say.ts';
import { done, type PartHand } from './changes.ts';
import type { SaysAt } from './says-here.ts';
import { ShapingEntry } from './shaping-entry.tsx';
import { shapingKinds } from './shaping-kinds.ts';

interface ShapingListProps {
  readonly hand: PartHand;
  /** index */
  readonly section: number;
  readonly form: SectionForm;
  /** of the section's row 1 */
  readonly side: Side;
  readonly says: SaysAt;
}

export function ShapingList({ hand, section, form, side, says }: ShapingListProps) {
  const [choosing, setChoosing] = useState(false);
  const { shaping } = form;
  const set = (next: readonly ShapingForm[], field: string) =>
    hand.section(section, { shaping: next }, field);
  const add = (kind: ShapingKind) => {
    setChoosing(false);
    set([...shaping, freshShaping(kind)], `shaping ${shaping.length + 1} added`);
  };
  const remove = (index: number) => {
    set(removed(shaping, index), `shaping ${index + 1} removed`);
    done.value = say('editor.removed', { name: say('editor.shaping') });
  };
  return (
    <div class="edit-stack">
      {shaping.length === 0 && <p class="edit-soft">{say('editor.noShaping')}</p>}
      {shaping.map((entry, i) => (
        <ShapingEntry
          // entries have no id; their fields show what the form holds
          key={i}
          entry={entry}
          side={side}
          says={(field) => says(field === '' ? `shaping ${i + 1}` : `shaping ${i + 1} ${field}`)}
          onChange={(next, field) => set(replaced(shaping, i, next), `shaping ${i + 1} ${field}`)}
          onRemove={() => remove(i)}
        />
      ))}
      <Button icon="notch" wide onPress={() => setChoosing(true)}>
        {say('editor.addShaping')}
      </Button>
      <Sheet open={choosing} title={say('editor.addShaping')} onClose={() => setChoosing(false)}>
        <div class="edit-stack">
          {shapingKinds.map(([kind, label, hint]) => (
            <Card key={kind} onPress={() => add(kind)}>
              <strong>{say(label)}</strong>
              <br />
              <span class="edit-soft">{say(hint)}</span>
            </Card>
          ))}
        </div>
      </Sheet>
    </div>
  );
}
