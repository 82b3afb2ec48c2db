import { editor } from '../../app/drafts/editor/editor.ts';
import { fabricNames } from '../../knit/fabric.ts';
import type { SectionCount } from '../../knit/piece/counts.ts';
import type { SectionForm } from '../../knit/piece/form/form.ts';
import { inserted, moved, removed } from '../../knit/piece/form/list.ts';
import { saysFabric, saysSide } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import { Band } from './band.tsx';
import { changePiece, openSection, type PartHand, withPart } from './changes.ts';
import { CountChange } from './count-change.tsx';
import { sectionTitle } from './fault-list.tsx';
import { MendsHere } from './mends-here.tsx';
import { MoreMenu } from './more-menu.tsx';
import { SaidChoice, SaidNeedle, SaidNumber } from './said.tsx';
import type { SaysAt } from './says-here.ts';
import { ShapingList } from './shaping-list.tsx';

export interface SectionBandProps {
  readonly hand: PartHand;
  readonly index: number;
  readonly section: SectionForm;
  /** sections in all */
  readonly of: number;
  readonly count: SectionCount | undefined;
  /** of the piece's height, 0 to 1 */
  readonly share: number;
  readonly says: SaysAt;
  readonly hasFault: boolean;
}

export function SectionBand(props: SectionBandProps) {
  const { hand, index, section, count, share, hasFault } = props;
  return (
    <Band
      place={{ piece: hand.piece, part: hand.part, section: index }}
      name={say('editor.sectionNamed', { number: index + 1, name: sectionTitle(section.name, index) })}
      count={<CountChange before={count?.before} after={count?.after} />}
      facts={`${rowsText(count)} · ${saysFabric(section.fabric)}`}
      shapes={section.shaping.length > 0}
      hasFault={hasFault}
      share={share}
    >
      <SectionFields {...props} />
    </Band>
  );
}

function rowsText(count: SectionCount | undefined): string {
  if (count === undefined || count.last < count.first) return say('editor.noRows');
  if (count.last === count.first) return say('editor.rowOnly', { first: count.first });
  return say('editor.rowsFromTo', { first: count.first, last: count.last });
}

function SectionFields(props: SectionBandProps) {
  const { hand, index, section, count, says } = props;
  const type = (field: 'name' | 'rows' | 'needle') => (typed: string) =>
    hand.section(index, { [field]: typed }, field);
  return (
    <div class="edit-stack">
      <div class="said-sentence">
        <SaidNumber
          label={say('editor.sectionName')}
          said="…"
          text
          typed={section.name ?? ''}
          onTyped={type('name')}
        />
        <SaidNumber
          label={say('editor.rows')}
          said={say('editor.saidRows')}
          typed={section.rows}
          error={says('rows')}
          onTyped={type('rows')}
        />
        <SaidChoice
          label={say('editor.fabric')}
          said={say('editor.saidFabric')}
          value={section.fabric}
          options={fabricNames.map((name) => ({ value: name, label: saysFabric(name) }))}
          error={says('fabric')}
          onChange={(fabric) => hand.section(index, { fabric }, 'fabric')}
        />
        <SaidNeedle typed={section.needle} error={says('needle')} onTyped={type('needle')} />
        <SectionMenu {...props} />
      </div>
      {/* what a number here breaks is told beside it */}
      {editor.value && <MendsHere editor={editor.value} inHand={hand.piece} />}
      {section.words ? (
        <p>{say('editor.words')}</p>
      ) : (
        <ShapingList hand={hand} section={index} form={section} side={count?.side ?? 'RS'} says={says} />
      )}
      {count && count.last >= count.first && (
        <p class="edit-soft">{say('editor.beginsOn', { side: saysSide(count.side, true) })}</p>
      )}
    </div>
  );
}

function SectionMenu({ hand, index, section, of }: SectionBandProps) {
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
