import { useContext } from 'preact/hooks';
import type { ShapingForm } from '../../knit/piece/form/form.ts';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { say } from '../../words/say.ts';
import { NeckSide } from './neck-side.ts';
import { RhythmFields } from './rhythm-fields.tsx';
import { SaidChoice, SaidNumber } from './said.tsx';
import type { SaysAt } from './says-here.ts';

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
      <div class="said-sentence">
        <ChangeChoice value={entry.change} onChange={(change) => onChange({ ...entry, change }, 'change')} />
        <EdgeChoice value={entry.edge} onChange={(edge) => onChange({ ...entry, edge }, 'edge')} />
        <RhythmFields
          timing={entry}
          says={says}
          onChange={(timing, field) => onChange({ ...entry, ...timing }, field)}
        />
        <SaidNumber
          label={say('editor.by')}
          said={say('editor.saidBy')}
          typed={entry.by}
          error={says('by')}
          onTyped={(by) => onChange({ ...entry, by }, 'by')}
        />
        <SaidNumber
          label={say('editor.inset')}
          said={say('editor.saidInset')}
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
    <div class="said-sentence">
      <ChangeChoice value={entry.change} onChange={(change) => onChange({ ...entry, change }, 'change')} />
      <SaidNumber
        label={say('editor.howMany')}
        said={say('editor.saidHowMany')}
        typed={entry.stitches}
        error={says('stitches')}
        onTyped={(stitches) => onChange({ ...entry, stitches }, 'stitches')}
      />
      <SaidNumber
        label={say('editor.onRow')}
        said={say('editor.saidOnRow')}
        typed={entry.row}
        error={says('row')}
        onTyped={(row) => onChange({ ...entry, row }, 'row')}
      />
    </div>
  );
}

function MiddleFields({ entry, says, onChange }: Of<'middle'>) {
  return (
    <>
      <p class="edit-soft">{say('editor.middleHint')}</p>
      <div class="said-sentence">
        <RhythmFields
          timing={entry}
          says={says}
          onChange={(timing, field) => onChange({ ...entry, ...timing }, field)}
        />
        <SaidNumber
          label={say('editor.middleFrom')}
          said={say('editor.saidMiddleFrom')}
          typed={entry.from}
          error={says('from')}
          onTyped={(from) => onChange({ ...entry, from }, 'from')}
        />
      </div>
    </>
  );
}

function GroupFields({ entry, says, onChange }: Of<'bind off' | 'cast on' | 'turn'>) {
  return (
    <>
      <div class="said-sentence">
        <SaidNumber
          label={say('editor.groups')}
          said="…"
          text
          typed={entry.groups}
          error={says('groups')}
          onTyped={(groups) => onChange({ ...entry, groups }, 'groups')}
        />
        <EdgeChoice value={entry.edge} onChange={(edge) => onChange({ ...entry, edge }, 'edge')} />
        <SaidNumber
          label={say('editor.first')}
          said={say('editor.saidFirst')}
          typed={entry.first}
          error={says('first')}
          onTyped={(first) => onChange({ ...entry, first }, 'first')}
        />
        <SaidNumber
          label={say('editor.every')}
          said={say('editor.saidEvery')}
          typed={entry.every}
          error={says('every')}
          onTyped={(every) => onChange({ ...entry, every }, 'every')}
        />
      </div>
      {entry.edge === 'both' && <p class="edit-soft">{say('editor.groupsBothHint')}</p>}
    </>
  );
}

type Change = 'decrease' | 'increase';

interface ChoiceProps<T> {
  readonly value: T;
  readonly onChange: (value: T) => void;
}

function ChangeChoice({ value, onChange }: ChoiceProps<Change>) {
  return (
    <SaidChoice
      label={say('editor.change')}
      said="…"
      value={value}
      options={[
        { value: 'decrease', label: say('editor.decrease') },
        { value: 'increase', label: say('editor.increase') },
      ]}
      onChange={onChange}
    />
  );
}

type Where = 'right' | 'left' | 'both';

/** Left stands first, as the knitter sees it with the right side facing. */
function EdgeChoice({ value, onChange }: ChoiceProps<Where>) {
  const neck = useContext(NeckSide);
  return (
    <SaidChoice
      label={say('editor.edge')}
      said={say('editor.saidEdge')}
      value={value}
      options={[
        { value: 'left', label: saysEdgeHere('left', neck) },
        { value: 'both', label: say('editor.both') },
        { value: 'right', label: saysEdgeHere('right', neck) },
      ]}
      onChange={onChange}
    />
  );
}

/** An edge by what lies there, where that is known. */
function saysEdgeHere(edge: 'right' | 'left', neck: 'right' | 'left' | undefined): string {
  const name = say(edge === 'left' ? 'editor.left' : 'editor.right');
  if (neck === undefined) return name;
  return say(edge === neck ? 'editor.neckEdge' : 'editor.armholeEdge', { edge: name });
}
