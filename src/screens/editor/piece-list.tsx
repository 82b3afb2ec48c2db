import { checkOf } from '../../app/drafts/editor/check-of.ts';
import { change } from '../../app/drafts/editor/editor.ts';
import type { GarmentForm, PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { newPieceId } from '../../app/garments/ids.ts';
import { freeName, inserted, moved, removed } from '../../knit/piece/form/list.ts';
import { Icon, type IconName } from '../../ui/icon/icon.tsx';
import { PieceThumb } from '../../ui/panel-map/piece-thumb.tsx';
import { say } from '../../words/say.ts';
import { done } from './changes.ts';
import { MoreMenu } from './more-menu.tsx';
import { saysHowMany } from './says-here.ts';

interface PieceListProps {
  readonly form: GarmentForm;
  readonly begun: ReadonlySet<string>;
  readonly finished: ReadonlySet<string>;
  readonly home: string;
}

export function PieceList({ form, begun, finished, home }: PieceListProps) {
  return (
    <ul class="edit-pieces">
      {form.pieces.map((entry, index) => (
        <li key={entry.id} class="edit-piece">
          <a
            class="edit-piece-link"
            data-piece={entry.id}
            href={`${home}?piece=${encodeURIComponent(entry.id)}`}
          >
            <PieceSummary entry={entry} isBegun={begun.has(entry.id)} isFinished={finished.has(entry.id)} />
          </a>
          <PieceMenu form={form} index={index} isBegun={begun.has(entry.id)} />
        </li>
      ))}
    </ul>
  );
}

interface PieceSummaryProps {
  readonly entry: PieceEntry;
  readonly isBegun: boolean;
  readonly isFinished: boolean;
}

function PieceSummary({ entry, isBegun, isFinished }: PieceSummaryProps) {
  const { plan, counts, faults } = checkOf(entry.form);
  const [first] = counts;
  const start = entry.form.parts[0]?.start.kind;
  const makes = Number(entry.form.makes);
  const facts = [
    first?.start
      ? say(start === 'pick up' ? 'editor.pickUpCount' : 'editor.castOnCount', { count: first.start })
      : '',
    counts.length > 1 ? say('editor.partsCount', { count: counts.length }) : '',
    makes > 1 ? say('editor.madeTimes', { count: makes }) : '',
  ].filter(Boolean);
  const { text, isWrong } = saysHowMany(faults);
  const isReady = faults.length === 0;
  // what is ready to be knitted is as all pieces begin: it needs no sign
  const done = isFinished ? 'check' : isBegun ? 'needle' : undefined;
  const sign: IconName | undefined = isReady ? done : isWrong ? 'warning' : 'missing';
  return (
    <>
      <span class="edit-piece-thumb">{plan && <PieceThumb parts={plan.parts} worked={[]} />}</span>
      <span class="edit-piece-words">
        <strong>{entry.form.name.trim() || say('editor.unnamedPiece')}</strong>
        <span>{facts.join(' · ')}</span>
        <span class={isWrong ? 'edit-wrong' : 'edit-right'}>
          {sign && <Icon name={sign} size="s" />}
          {isReady ? say(wordOf(isBegun, isFinished)) : text}
        </span>
      </span>
      <Icon name="onward" size="s" />
    </>
  );
}

const wordOf = (isBegun: boolean, isFinished: boolean) =>
  isFinished ? 'editor.pieceFinished' : isBegun ? 'editor.pieceBegun' : 'editor.pieceReady';

function PieceMenu({ form, index, isBegun }: { form: GarmentForm; index: number; isBegun: boolean }) {
  const entry = form.pieces[index] as PieceEntry;
  const name = entry.form.name.trim() || say('editor.unnamedPiece');
  const turn = (pieces: (old: GarmentForm['pieces']) => GarmentForm['pieces'], told: string) => () => {
    change((old) => ({ ...old, pieces: pieces(old.pieces) }), told);
    done.value = told;
  };
  const copy = (): PieceEntry => ({
    id: newPieceId(),
    form: {
      ...entry.form,
      name: freeName(
        entry.form.name,
        form.pieces.map((piece) => piece.form.name),
      ),
    },
  });
  return (
    <MoreMenu
      name={name}
      note={isBegun ? say('editor.cannotRemoveBegun') : undefined}
      entries={[
        {
          label: say('editor.moveUp'),
          disabled: index === 0,
          onPress: turn((pieces) => moved(pieces, index, -1), say('editor.moved', { name })),
        },
        {
          label: say('editor.moveDown'),
          disabled: index === form.pieces.length - 1,
          onPress: turn((pieces) => moved(pieces, index, 1), say('editor.moved', { name })),
        },
        {
          label: say('editor.duplicate'),
          icon: 'plus',
          onPress: turn((pieces) => inserted(pieces, index + 1, copy()), say('editor.copied', { name })),
        },
        {
          label: say('editor.remove'),
          icon: 'trash',
          danger: true,
          disabled: isBegun,
          onPress: turn((pieces) => removed(pieces, index), say('editor.removed', { name })),
        },
      ]}
    />
  );
}
