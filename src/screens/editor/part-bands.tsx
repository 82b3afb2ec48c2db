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
import { twinOf, unevenWith } from '../../knit/piece/form/twins.ts';
import type { PartEnd } from '../../knit/piece/recipe.ts';
import type { PieceId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { Band } from './band.tsx';
import { changePiece, openSection, partHand, withPart } from './changes.ts';
import { EndFields } from './end-fields.tsx';
import { placeId } from './fault-list.tsx';
import { MoreMenu } from './more-menu.tsx';
import { NeckSide, neckSideOf } from './neck-side.ts';
import { PartSettings } from './part-settings.tsx';
import { saysAt } from './says-here.ts';
import { SectionBand } from './section-band.tsx';
import { StartFields } from './start-fields.tsx';

interface PartBandsProps {
  readonly piece: PieceId;
  readonly form: PieceForm;
  readonly index: number;
  readonly part: PartForm;
  readonly check: PieceCheck;
}

/** A part from where it begins to where it ends; the page draws it upwards, readers and keys go through it in this order. */
export function PartBands({ piece, form, index, part, check }: PartBandsProps) {
  const hand = partHand(piece, index);
  const says = saysAt(check.faults, index);
  const count = check.counts[index];
  const lead = twinOf(form, index);
  const uneven = unevenWith(form, index);
  const rows = check.counts.reduce((most, one) => Math.max(most, one.rows), 1);
  const wrongAt = (...fields: readonly string[]) => fields.some((field) => says(field) !== undefined);
  return (
    <NeckSide.Provider value={neckSideOf(part)}>
      <section class="edit-part" id={placeId(index)} aria-label={part.name.trim() || say('editor.part')}>
        {lead !== undefined && (
          <p class="edit-soft edit-mirrors">
            {say('editor.mirrors', { part: form.parts[lead]?.name ?? '' })}
          </p>
        )}
        {uneven && (
          <p class="edit-wrong edit-mirrors">
            {say('editor.uneven', { ...uneven, part: form.parts[uneven.part]?.name ?? '' })}
          </p>
        )}
        <Band
          place={{ piece, part: index, section: 'start' }}
          name={saysStart(part, count?.start)}
          facts={form.parts.length > 1 ? part.name : undefined}
          hasFault={wrongAt('name', ...startFields(part))}
          aside={<PartMenu piece={piece} form={form} index={index} part={part} />}
        >
          <div class="edit-stack">
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
          </div>
        </Band>
        {part.sections.map((section, i) => (
          <SectionBand
            // sections have no id; their fields show what the form holds
            key={i}
            hand={hand}
            index={i}
            section={section}
            of={part.sections.length}
            count={count?.sections[i]}
            share={(Number(section.rows) || 0) / rows}
            says={saysAt(check.faults, index, i)}
            hasFault={check.faults.some((found) => found.part === index && found.section === i)}
          />
        ))}
        <AddSection piece={piece} part={part} index={index} />
        <Band
          place={{ piece, part: index, section: 'end' }}
          name={say(endNames[part.end], { count: count?.left ?? '?' })}
          hasFault={wrongAt('end')}
        >
          <EndFields hand={hand} part={part} says={says} left={count?.left} />
        </Band>
      </section>
    </NeckSide.Provider>
  );
}

const endNames = {
  'bind off': 'editor.leftBound',
  hold: 'editor.leftHeld',
  split: 'editor.leftSplit',
} as const satisfies Readonly<Record<PartEnd, string>>;

/** 'Cast on 118', '48 from Body', 'Pick up 96' */
function saysStart({ start }: PartForm, stitches: number | undefined): string {
  const count = stitches ?? '?';
  if (start.kind === 'split') return say('editor.startSplit', { count, part: start.part });
  return say(start.kind === 'cast on' ? 'editor.startCastOn' : 'editor.startPickUp', { count });
}

const startFields = ({ start }: PartForm): readonly string[] =>
  start.kind === 'cast on'
    ? ['cast on']
    : start.kind === 'split'
      ? ['from', 'stitches']
      : ['pick up', ...start.edges.map((_, i) => `pick up ${i + 1}`)];

function AddSection({ piece, part, index }: Pick<PartBandsProps, 'piece' | 'part' | 'index'>) {
  const add = () => {
    const section = freshSection(part, mainOf(garmentForm.value ?? blankGarment), say('editor.starter body'));
    changePiece(
      piece,
      (old) => withPart(old, index, (p) => ({ ...p, sections: [...p.sections, section] })),
      'added',
      `${index} section ${part.sections.length} added`,
    );
    openSection.value = { piece, part: index, section: part.sections.length };
  };
  return (
    <Button kind="quiet" icon="plus" onPress={add}>
      {say('editor.addSection')}
    </Button>
  );
}

function PartMenu({ piece, form, index, part }: Omit<PartBandsProps, 'check'>) {
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
