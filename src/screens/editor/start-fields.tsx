import type { PartCount } from '../../knit/piece/counts.ts';
import type { PartForm, PickUpForm, PieceForm, StartForm } from '../../knit/piece/form/form.ts';
import { inserted, removed, replaced } from '../../knit/piece/form/list.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { Choice } from '../../ui/choice/choice.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { saysStitches } from '../../words/craft.ts';
import { say } from '../../words/say.ts';
import type { PartHand } from './changes.ts';
import type { SaysAt } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

interface StartFieldsProps {
  readonly hand: PartHand;
  readonly form: PieceForm;
  readonly part: PartForm;
  readonly says: SaysAt;
  readonly count: PartCount | undefined;
}

/** How a part begins: a cast-on, stitches that another part left resting, or stitches picked up along edges. */
export function StartFields(props: StartFieldsProps) {
  const { hand, form, part } = props;
  const { start } = part;
  const kinds = [
    { value: 'cast on', label: say('editor.castOn') },
    ...(hand.part > 0 || start.kind === 'split'
      ? [{ value: 'split' as const, label: say('editor.splitFrom') }]
      : []),
    { value: 'pick up', label: say('editor.pickUp') },
  ] as const;
  const setKind = (kind: StartForm['kind']) => {
    const earlier = form.parts
      .slice(0, hand.part)
      .filter((other) => other.end !== 'bind off')
      .at(-1);
    hand.type({ start: freshStart(kind, start, earlier?.name ?? '') }, 'start kind');
  };
  return (
    <div class="edit-stack">
      <Choice label={say('editor.from')} value={start.kind} options={kinds} onChange={setKind} />
      {start.kind === 'cast on' && <CastOnFields {...props} start={start} />}
      {start.kind === 'split' && <SplitFields {...props} start={start} />}
      {start.kind === 'pick up' && <PickUpFields {...props} start={start} />}
    </div>
  );
}

function freshStart(kind: StartForm['kind'], old: StartForm, earlier: string): StartForm {
  const stitches = old.kind === 'pick up' ? (old.edges[0]?.stitches ?? '') : old.stitches;
  if (kind === 'cast on') return { kind, stitches };
  if (kind === 'split') return { kind, part: earlier, stitches, edge: 'right' };
  return { kind, edges: [{ along: '', stitches }] };
}

type Of<Kind extends StartForm['kind']> = StartFieldsProps & {
  readonly start: Extract<StartForm, { kind: Kind }>;
};

function CastOnFields({ hand, start, says }: Of<'cast on'>) {
  return (
    <TypedNumber
      label={say('editor.stitches')}
      typed={start.stitches}
      error={says('cast on')}
      onTyped={(stitches) => hand.type({ start: { ...start, stitches } }, 'cast on')}
    />
  );
}

function SplitFields({ hand, form, start, says }: Of<'split'>) {
  const earlier = form.parts.slice(0, hand.part).map((part) => part.name);
  const known = earlier.includes(start.part);
  const options = [
    ...(known ? [] : [{ value: start.part, label: say('editor.noEarlierPart') }]),
    ...earlier.map((name) => ({ value: name, label: name })),
  ];
  return (
    <>
      {(earlier.length > 1 || !known) && (
        <SelectField
          label={say('editor.fromPart')}
          value={start.part}
          options={options}
          error={says('from')}
          onChange={(part) => hand.type({ start: { ...start, part } }, 'from')}
        />
      )}
      {known && earlier.length === 1 && says('from') && <p class="edit-wrong">{says('from')}</p>}
      <Choice
        label={say('editor.whichEdge')}
        hint={say('editor.edgeHint')}
        value={start.edge}
        options={[
          { value: 'left', label: say('editor.atLeft') },
          { value: 'middle', label: say('editor.atMiddle') },
          { value: 'right', label: say('editor.atRight') },
        ]}
        onChange={(edge) => hand.type({ start: { ...start, edge } }, 'edge')}
      />
      <TypedNumber
        label={say('editor.stitches')}
        typed={start.stitches}
        error={says('stitches')}
        onTyped={(stitches) => hand.type({ start: { ...start, stitches } }, 'split stitches')}
      />
    </>
  );
}

function PickUpFields({ hand, start, says, count }: Of<'pick up'>) {
  const { edges } = start;
  const set = (next: readonly PickUpForm[], field: string) =>
    hand.type({ start: { ...start, edges: next } }, field);
  return (
    <>
      {edges.map((edge, i) => (
        // edges have no id; their fields show what the form holds
        <div class="edit-edge" key={i}>
          <TextField
            label={say('editor.along')}
            value={edge.along}
            onInput={(along) => set(replaced(edges, i, { ...edge, along }), `along ${i}`)}
          />
          <TypedNumber
            label={say('editor.stitches')}
            typed={edge.stitches}
            error={says(`pick up ${i + 1}`)}
            onTyped={(stitches) => set(replaced(edges, i, { ...edge, stitches }), `picked up ${i}`)}
          />
          <IconButton
            icon="trash"
            label={`${say('editor.removeEdge')}: ${edge.along}`}
            onPress={() => set(removed(edges, i), `edge ${i} removed`)}
          />
        </div>
      ))}
      {says('pick up') && <p class="edit-wrong">{says('pick up')}</p>}
      <Button
        icon="plus"
        onPress={() =>
          set(inserted(edges, edges.length, { along: '', stitches: '' }), `edge ${edges.length} added`)
        }
      >
        {say('editor.addEdge')}
      </Button>
      {count?.start !== undefined && (
        <p>{say('editor.pickUpTotal', { stitches: saysStitches(count.start) })}</p>
      )}
    </>
  );
}
