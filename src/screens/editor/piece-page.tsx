import { checkOf } from '../../app/drafts/editor/check-of.ts';
import { editor } from '../../app/drafts/editor/editor.ts';
import type { PieceEntry } from '../../app/drafts/editor/garment-form.ts';
import { roleShown } from '../../app/drafts/editor/renaming.ts';
import { hrefTo } from '../../app/routes.ts';
import type { PieceForm } from '../../knit/piece/form/form.ts';
import { freshPart } from '../../knit/piece/form/fresh.ts';
import { type GarmentId, makeKey, type PieceId } from '../../progress/log.ts';
import { Button } from '../../ui/button/button.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { hrefToTool } from '../count/tools.ts';
import { saysMake } from '../says-make.ts';
import { changePiece, openSection, pieceOpen } from './changes.ts';
import { placeId } from './fault-list.tsx';
import { Fold } from './fold.tsx';
import { MendsHere } from './mends-here.tsx';
import { PieceSketch } from './piece-sketch.tsx';
import { Branches, PieceTree } from './piece-tree.tsx';
import { RoleField } from './role-field.tsx';
import { type SaysAt, saysAt } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

interface PiecePageProps {
  readonly entry: PieceEntry;
  readonly isBegun: boolean;
  /** id */
  readonly garment: GarmentId;
}

export function PiecePage({ entry, isBegun, garment }: PiecePageProps) {
  const { id, form } = entry;
  const check = checkOf(form);
  const says = saysAt(check.faults);
  if (isBegun) return <BegunPiece entry={entry} says={says} garment={garment} />;
  const addPart = () => {
    const part = freshPart(form, say('editor.newPart'));
    changePiece(
      id,
      (old) => ({ ...old, parts: [...old.parts, part] }),
      'added',
      `part ${form.parts.length} added`,
    );
  };
  return (
    <>
      <div class="edit-piece-page">
        <Shows what="edit-piece" />
        <div class="edit-piece-grid">
          <div class="edit-in-sight">
            <PieceSketch entry={entry} />
            <Branches form={form} check={check} />
          </div>
          <div class="edit-bands">
            {editor.value && !isSectionOpen(id, form) && <MendsHere editor={editor.value} inHand={id} />}
            <PieceFields id={id} form={form} says={says} />
            {/* parts have no id of their own; every field shows what the form holds, so a moved part takes it along */}
            <PieceTree piece={id} form={form} check={check} />
            <Button kind="quiet" icon="plus" onPress={addPart}>
              {say('editor.addPart')}
            </Button>
          </div>
        </div>
      </div>
      <LiveRegion text={liveText(entry)} waitMs={700} />
    </>
  );
}

/** A section that stands open has what its numbers break beside them. */
function isSectionOpen(id: PieceId, form: PieceForm): boolean {
  const open = openSection.value;
  if (open?.piece !== id || typeof open.section !== 'number') return false;
  return form.parts[open.part]?.sections[open.section] !== undefined;
}

/** What a reader hears after typing in the open section: the count before and after it. */
function liveText({ id, form }: PieceEntry): string {
  const open = openSection.value;
  if (open?.piece !== id) return '';
  if (typeof open.section !== 'number') return '';
  const count = checkOf(form).counts[open.part]?.sections[open.section];
  if (count?.before === undefined || count.after === undefined) return '';
  return say('editor.countChangeSpoken', { before: count.before, after: count.after });
}

function PieceFields({
  id,
  form,
  says,
}: {
  readonly id: PieceId;
  readonly form: PieceForm;
  readonly says: SaysAt;
}) {
  const type = (field: 'name' | 'makes') => (typed: string) =>
    changePiece(id, (old) => ({ ...old, [field]: typed }), field, field);
  const facts = [say(`editor.role ${roleShown({ id, form }, editor.value?.old)}`), saysMakes(form)];
  return (
    <Fold
      id={placeId()}
      head={<strong class="edit-section-name">{facts.join(' · ')}</strong>}
      open={pieceOpen.value}
      marked={says('name') !== undefined || says('makes') !== undefined}
      onToggle={() => {
        pieceOpen.value = !pieceOpen.value;
      }}
    >
      <div class="edit-stack">
        <NameField id={id} form={form} says={says} />
        <RoleField entry={{ id, form }} />
        <TypedNumber
          label={say('editor.makes')}
          typed={form.makes}
          error={says('makes')}
          onTyped={type('makes')}
        />
        {Number(form.makes) > 1 && (
          <Toggle
            label={say('editor.mirrored')}
            hint={say('editor.mirroredHint')}
            on={form.mirrored ?? false}
            onChange={(mirrored) => changePiece(id, (old) => ({ ...old, mirrored }), 'mirrored', 'mirrored')}
          />
        )}
      </div>
    </Fold>
  );
}

const saysMakes = ({ makes }: PieceForm): string => {
  const count = Number(makes);
  return Number.isInteger(count) && count > 0 ? say('editor.toMake', { count }) : say('editor.makes');
};

function NameField({
  id,
  form,
  says,
}: {
  readonly id: PieceId;
  readonly form: PieceForm;
  readonly says: SaysAt;
}) {
  return (
    <TextField
      label={say('editor.name')}
      value={form.name}
      error={says('name')}
      onInput={(name) => changePiece(id, (old) => renamePiece(old, name), 'name', 'name')}
    />
  );
}

/** A piece of one part that bears the piece's name goes on doing so. */
function renamePiece(piece: PieceForm, name: string): PieceForm {
  const [only] = piece.parts;
  const follows = piece.parts.length === 1 && only?.name === piece.name;
  return { ...piece, name, ...(follows && only ? { parts: [{ ...only, name }] } : {}) };
}

/** Every copy of every part: one of them begun leaves the others as they are. */
function makesOf({ id: piece, form }: PieceEntry, garment: GarmentId) {
  const makes = Number(form.makes) || 1;
  return Array.from({ length: makes }, (_, i) => i + 1).flatMap((make) =>
    form.parts.map(({ name }, part) => ({
      key: makeKey({ garment, piece, part, make }),
      name: saysMake(form.name, name, make, makes),
    })),
  );
}

function BegunPiece({ entry, says, garment }: { entry: PieceEntry; says: SaysAt; garment: GarmentId }) {
  return (
    <>
      <PieceSketch entry={entry} />
      <Notice
        kind="note"
        title={say('editor.begunTitle')}
        actions={<Button href={hrefTo('garment', { garment })}>{say('editor.openGarment')}</Button>}
      >
        {say('editor.begunText')}
      </Notice>
      <section class="edit-stack" aria-labelledby="edit-rest">
        <h2 id="edit-rest">{say('editor.planRest')}</h2>
        <p class="edit-soft">{say('editor.planRestHint')}</p>
        {makesOf(entry, garment).map(({ key, name }) => (
          <Button key={key} icon="replan" wide href={hrefToTool(key, 'rework')}>
            {name}
          </Button>
        ))}
      </section>
      <TextField
        label={say('editor.name')}
        value={entry.form.name}
        error={says('name')}
        onInput={(name) => changePiece(entry.id, (old) => ({ ...old, name }), 'name', 'name')}
      />
      <RoleField entry={entry} />
    </>
  );
}
