import type { ShapingForm } from '../../knit/piece/form/form.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { say } from '../../words/say.ts';
import { RhythmFields } from './rhythm-fields.tsx';
import type { SaysAt } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

export interface ShapingFieldsProps {
  readonly entry: ShapingForm;
  /** by the entry's own field */
  readonly says: SaysAt;
  readonly onChange: (next: ShapingForm, field: string) => void;
}

/** The fields of one entry, by its kind. */
export function ShapingFields(props: ShapingFieldsProps) {
  switch (props.entry.kind) {
    case 'edge':
      return <EdgeFields {...props} entry={props.entry} />;
    case 'across':
      return <AcrossFields {...props} entry={props.entry} />;
    case 'middle':
      return <MiddleFields {...props} entry={props.entry} />;
    default:
      return <GroupFields {...props} entry={props.entry} />;
  }
}

type Of<Kind extends ShapingForm['kind']> = Omit<ShapingFieldsProps, 'entry'> & {
  readonly entry: Extract<ShapingForm, { kind: Kind }>;
};

function EdgeFields({ entry, says, onChange }: Of<'edge'>) {
  return (
    <>
      <ChangeChoice value={entry.change} onChange={(change) => onChange({ ...entry, change }, 'change')} />
      <EdgeChoice value={entry.edge} onChange={(edge) => onChange({ ...entry, edge }, 'edge')} />
      <RhythmFields
        timing={entry}
        says={says}
        onChange={(timing, field) => onChange({ ...entry, ...timing }, field)}
      />
      <div class="edit-pair">
        <TypedNumber
          label={say('editor.by')}
          typed={entry.by}
          error={says('by')}
          onTyped={(by) => onChange({ ...entry, by }, 'by')}
        />
        <TypedNumber
          label={say('editor.inset')}
          typed={entry.inset}
          error={says('inset')}
          onTyped={(inset) => onChange({ ...entry, inset }, 'inset')}
        />
      </div>
      <Toggle
        label={say('editor.lean')}
        on={entry.lean === 'mirrored'}
        onChange={(on) => onChange({ ...entry, lean: on ? 'mirrored' : 'plain' }, 'lean')}
      />
    </>
  );
}

function AcrossFields({ entry, says, onChange }: Of<'across'>) {
  return (
    <>
      <ChangeChoice value={entry.change} onChange={(change) => onChange({ ...entry, change }, 'change')} />
      <div class="edit-pair">
        <TypedNumber
          label={say('editor.howMany')}
          typed={entry.stitches}
          error={says('stitches')}
          onTyped={(stitches) => onChange({ ...entry, stitches }, 'stitches')}
        />
        <TypedNumber
          label={say('editor.onRow')}
          typed={entry.row}
          error={says('row')}
          onTyped={(row) => onChange({ ...entry, row }, 'row')}
        />
      </div>
    </>
  );
}

function MiddleFields({ entry, says, onChange }: Of<'middle'>) {
  return (
    <>
      <p class="edit-soft">{say('editor.middleHint')}</p>
      <TypedNumber
        label={say('editor.middleFrom')}
        typed={entry.from}
        error={says('from')}
        onTyped={(from) => onChange({ ...entry, from }, 'from')}
      />
      <RhythmFields
        timing={entry}
        says={says}
        onChange={(timing, field) => onChange({ ...entry, ...timing }, field)}
      />
    </>
  );
}

function GroupFields({ entry, says, onChange }: Of<'bind off' | 'cast on' | 'turn'>) {
  return (
    <>
      <EdgeChoice value={entry.edge} onChange={(edge) => onChange({ ...entry, edge }, 'edge')} />
      {entry.edge === 'both' && <p class="edit-soft">{say('editor.groupsBothHint')}</p>}
      <TypedNumber
        label={say('editor.groups')}
        hint={say('editor.groupsHint')}
        list
        typed={entry.groups}
        error={says('groups')}
        onTyped={(groups) => onChange({ ...entry, groups }, 'groups')}
      />
      <div class="edit-pair">
        <TypedNumber
          label={say('editor.first')}
          typed={entry.first}
          error={says('first')}
          onTyped={(first) => onChange({ ...entry, first }, 'first')}
        />
        <TypedNumber
          label={say('editor.every')}
          typed={entry.every}
          error={says('every')}
          onTyped={(every) => onChange({ ...entry, every }, 'every')}
        />
      </div>
    </>
  );
}

type Change = 'decrease' | 'increase';

function ChangeChoice({
  value,
  onChange,
}: {
  readonly value: Change;
  readonly onChange: (value: Change) => void;
}) {
  return (
    <Choice
      label={say('editor.change')}
      value={value}
      options={[
        { value: 'decrease', label: say('editor.decrease'), icon: 'decrease' },
        { value: 'increase', label: say('editor.increase'), icon: 'increase' },
      ]}
      onChange={onChange}
    />
  );
}

type Where = 'right' | 'left' | 'both';

/** Left stands left, as the knitter sees it with the right side facing. */
function EdgeChoice({
  value,
  onChange,
}: {
  readonly value: Where;
  readonly onChange: (value: Where) => void;
}) {
  return (
    <Choice
      label={say('editor.edge')}
      value={value}
      options={[
        { value: 'left', label: say('editor.left') },
        { value: 'both', label: say('editor.both') },
        { value: 'right', label: say('editor.right') },
      ]}
      onChange={onChange}
    />
  );
}
