import { garmentForm } from '../../app/drafts/editor/editor.ts';
import { blankGarment, mainOf } from '../../app/drafts/editor/garment-form.ts';
import type { PieceCheck } from '../../knit/piece/form/check.ts';
import {
  duplicatePart,
  mirrorPart,
  movePart,
  removePart,
  renamePart,
} from '../../knit/piece/form/edit-parts.ts';
import type { PartForm, PieceForm } from '../../knit/piece/form/form.ts';
import { freshSection } from '../../knit/piece/form/fresh.ts';
import type { PieceId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { changePiece, openSection, partHand, withPart } from './changes.ts';
import { CountChange } from './count-change.tsx';
import { EndFields } from './end-fields.tsx';
import { placeId } from './fault-list.tsx';
import { MoreMenu } from './more-menu.tsx';
import { PartSettings } from './part-settings.tsx';
import { saysAt } from './says-here.ts';
import { SectionCard } from './section-card.tsx';
import { StartFields } from './start-fields.tsx';

interface PartEditorProps {
  readonly piece: PieceId;
  readonly form: PieceForm;
  readonly index: number;
  readonly part: PartForm;
  readonly check: PieceCheck;
}

export function PartEditor({ piece, form, index, part, check }: PartEditorProps) {
  const hand = partHand(piece, index);
  const says = saysAt(check.faults, index);
  const count = check.counts[index];
  const heading = `${placeId(index)}-name`;
  const addSection = () => {
    const section = freshSection(part, mainOf(garmentForm.value ?? blankGarment));
    const add = (old: PieceForm) =>
      withPart(old, index, (p) => ({ ...p, sections: [...p.sections, section] }));
    changePiece(piece, add, 'added', `${index} section ${part.sections.length} added`);
    openSection.value = { piece, part: index, section: part.sections.length };
  };
  return (
    <section class="edit-part" id={placeId(index)} aria-labelledby={heading}>
      <div class="edit-part-head">
        <h2 id={heading}>{part.name.trim() || say('editor.part')}</h2>
        <CountChange before={count?.start} after={count?.left} />
        <PartMenu piece={piece} form={form} index={index} part={part} />
      </div>
      {form.parts.length > 1 && (
        <TextField
          label={say('editor.partName')}
          value={part.name}
          error={says('name')}
          onInput={(name) =>
            changePiece(piece, (old) => renamePart(old, index, name), 'name', `${index} part name`)
          }
        />
      )}
      <StartFields hand={hand} form={form} part={part} says={says} count={count} />
      <PartSettings hand={hand} part={part} side={count?.sections[0]?.side} />
      <div class="edit-sections">
        {part.sections.map((section, i) => (
          <SectionCard
            // sections have no id; their fields show what the form holds
            key={i}
            hand={hand}
            index={i}
            section={section}
            of={part.sections.length}
            count={count?.sections[i]}
            says={saysAt(check.faults, index, i)}
            hasFault={check.faults.some((found) => found.part === index && found.section === i)}
          />
        ))}
      </div>
      <Button icon="plus" wide onPress={addSection}>
        {say('editor.addSection')}
      </Button>
      <EndFields hand={hand} part={part} says={says} left={count?.left} />
    </section>
  );
}

function PartMenu({ piece, form, index, part }: Omit<PartEditorProps, 'check'>) {
  const name = part.name.trim() || say('editor.part');
  const turn = (make: (old: PieceForm) => PieceForm, told: string) => () => changePiece(piece, make, told);
  return (
    <MoreMenu
      name={name}
      entries={[
        {
          label: say('editor.moveUp'),
          disabled: index === 0,
          onPress: turn((old) => movePart(old, index, -1), say('editor.moved', { name })),
        },
        {
          label: say('editor.moveDown'),
          disabled: index === form.parts.length - 1,
          onPress: turn((old) => movePart(old, index, 1), say('editor.moved', { name })),
        },
        {
          label: say('editor.duplicate'),
          icon: 'plus',
          onPress: turn((old) => duplicatePart(old, index), say('editor.copied', { name })),
        },
        {
          label: say('editor.mirrorPart'),
          icon: 'plus',
          onPress: turn(
            (old) => mirrorPart(old, index, mirrorName(part.name)),
            say('editor.copied', { name }),
          ),
        },
        {
          label: say('editor.remove'),
          icon: 'trash',
          danger: true,
          onPress: turn((old) => removePart(old, index), say('editor.removed', { name })),
        },
      ]}
    />
  );
}

/** The other shoulder, where the name is that of one. */
function mirrorName(name: string): string {
  const [right, left] = [say('editor.rightName'), say('editor.leftName')];
  if (name === right) return left;
  return name === left ? right : say('editor.mirrorName', { name });
}
