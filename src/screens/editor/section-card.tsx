import './section-card.css';
import { fabricNames } from '../../knit/fabric.ts';
import type { SectionCount } from '../../knit/piece/counts.ts';
import type { SectionForm } from '../../knit/piece/form/form.ts';
import { inserted, moved, removed } from '../../knit/piece/form/list.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysFabric, saysSide } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { changePiece, openSection, type PartHand, withPart } from './changes.ts';
import { CountChange } from './count-change.tsx';
import { placeId, sectionTitle } from './fault-list.tsx';
import { Fold } from './fold.tsx';
import { MoreMenu } from './more-menu.tsx';
import type { SaysAt } from './says-here.ts';
import { ShapingList } from './shaping-list.tsx';
import { TypedNumber } from './typed-number.tsx';

export interface SectionCardProps {
  readonly hand: PartHand;
  readonly index: number;
  readonly section: SectionForm;
  /** sections in all */
  readonly of: number;
  readonly count: SectionCount | undefined;
  readonly says: SaysAt;
  readonly hasFault: boolean;
}

export function SectionCard(props: SectionCardProps) {
  const { hand, index, section, count, hasFault } = props;
  const here = { piece: hand.piece, part: hand.part, section: index };
  const open = openSection.value;
  const isOpen = open?.piece === here.piece && open.part === here.part && open.section === index;
  const toggle = () => {
    openSection.value = isOpen ? undefined : here;
  };
  return (
    <Fold
      id={placeId(hand.part, index)}
      open={isOpen}
      marked={hasFault}
      onToggle={toggle}
      aside={<SectionMenu {...props} />}
      head={
        <>
          <strong class="edit-section-name">
            {hasFault && <Icon name="warning" size="s" label={say('editor.toMend', { count: 1 })} />}
            {say('editor.sectionNamed', { number: index + 1, name: sectionTitle(section.name, index) })}
          </strong>
          <CountChange before={count?.before} after={count?.after} />
          <span class="edit-section-facts">
            {rowsText(count)} · {saysFabric(section.fabric)}
          </span>
        </>
      }
    >
      <SectionFields {...props} />
    </Fold>
  );
}

function rowsText(count: SectionCount | undefined): string {
  if (count === undefined || count.last < count.first) return say('editor.noRows');
  if (count.last === count.first) return say('editor.rowOnly', { first: count.first });
  return say('editor.rowsFromTo', { first: count.first, last: count.last });
}

function SectionFields({ hand, index, section, count, says }: SectionCardProps) {
  const type = (field: 'name' | 'rows' | 'needle') => (typed: string) =>
    hand.section(index, { [field]: typed }, field);
  return (
    <div class="edit-stack">
      <TextField
        label={say('editor.sectionName')}
        hint={say('editor.sectionNameHint')}
        value={section.name}
        onInput={type('name')}
      />
      <div class="edit-pair">
        <TypedNumber
          label={say('editor.rows')}
          typed={section.rows}
          error={says('rows')}
          onTyped={type('rows')}
        />
        <TypedNumber
          label={say('editor.needle')}
          typed={section.needle}
          decimals
          error={says('needle')}
          onTyped={type('needle')}
        />
      </div>
      <SelectField
        label={say('editor.fabric')}
        value={section.fabric}
        options={fabricNames.map((name) => ({ value: name, label: saysFabric(name) }))}
        error={says('fabric')}
        onChange={(fabric) => hand.section(index, { fabric }, 'fabric')}
      />
      {count && count.last >= count.first && (
        <p class="edit-soft">{say('editor.beginsOn', { side: saysSide(count.side, true) })}</p>
      )}
      {section.words ? (
        <p>{say('editor.words')}</p>
      ) : (
        <ShapingList hand={hand} section={index} form={section} side={count?.side ?? 'RS'} says={says} />
      )}
    </div>
  );
}

function SectionMenu({ hand, index, section, of }: SectionCardProps) {
  const name = sectionTitle(section.name, index);
  type Sections = readonly SectionForm[];
  const turn = (make: (sections: Sections) => Sections, told: string, open?: number) => () => {
    changePiece(
      hand.piece,
      (form) => withPart(form, hand.part, (part) => ({ ...part, sections: make(part.sections) })),
      told,
    );
    openSection.value =
      open === undefined ? undefined : { piece: hand.piece, part: hand.part, section: open };
  };
  return (
    <MoreMenu
      name={name}
      entries={[
        {
          label: say('editor.moveUp'),
          disabled: index === 0,
          onPress: turn((list) => moved(list, index, -1), say('editor.moved', { name })),
        },
        {
          label: say('editor.moveDown'),
          disabled: index === of - 1,
          onPress: turn((list) => moved(list, index, 1), say('editor.moved', { name })),
        },
        {
          label: say('editor.duplicate'),
          icon: 'plus',
          onPress: turn(
            (list) => inserted(list, index + 1, section),
            say('editor.copied', { name }),
            index + 1,
          ),
        },
        {
          label: say('editor.remove'),
          icon: 'trash',
          danger: true,
          onPress: turn((list) => removed(list, index), say('editor.removed', { name })),
        },
      ]}
    />
  );
}
