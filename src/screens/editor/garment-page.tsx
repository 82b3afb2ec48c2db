import { useState } from 'preact/hooks';
import { change, type Editor, garmentFaults } from '../../app/drafts/editor/editor.ts';
import type { GarmentForm } from '../../app/drafts/editor/garment-form.ts';
import { TextField } from '../../ui/field/text-field.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { AddPiece } from './add-piece.tsx';
import { DraftNotice, SavedNotice } from './draft-notice.tsx';
import { Fold } from './fold.tsx';
import { GaugeFields } from './gauge-fields.tsx';
import { MendsHere } from './mends-here.tsx';
import { PieceList } from './piece-list.tsx';
import { saysGarmentFault } from './says-here.ts';
import { StraightPanels } from './straight-panels.tsx';
import { YarnFields } from './yarn-fields.tsx';

interface GarmentPageProps {
  readonly editor: Editor;
  readonly form: GarmentForm;
  /** address of this page */
  readonly home: string;
}

export function GarmentPage({ editor, form, home }: GarmentPageProps) {
  return (
    <>
      <SavedNotice />
      <DraftNotice editor={editor} />
      <MendsHere editor={editor} />
      <div class="edit-garment">
        <Shows what="edit-garment" />
        <div class="edit-side">
          <GarmentFields form={form} />
          <StraightPanels form={form} />
        </div>
        <div class="edit-side">
          <section class="edit-stack" aria-labelledby="edit-pieces">
            <h2 id="edit-pieces">{say('editor.pieces')}</h2>
            {form.pieces.length === 0 && <p>{say('editor.noPieces')}</p>}
            <PieceList form={form} begun={editor.begun} finished={editor.finished} home={home} />
          </section>
          <AddPiece form={form} home={home} />
        </div>
      </div>
    </>
  );
}

function GarmentFields({ form }: { readonly form: GarmentForm }) {
  const [yarnOpen, setYarnOpen] = useState(false);
  const faults = garmentFaults.value;
  const type = (field: 'name' | 'notes') => (typed: string) =>
    change((old) => ({ ...old, [field]: typed }), field, `garment ${field}`);
  return (
    <section class="edit-stack" aria-label={say('editor.garment')}>
      <TextField
        label={say('editor.name')}
        hint={say('editor.garmentNameHint')}
        value={form.name}
        error={saysGarmentFault(faults, 'name')}
        onInput={type('name')}
      />
      <GaugeFields form={form} />
      <Fold head={say('editor.yarnAndNotes')} open={yarnOpen} onToggle={() => setYarnOpen(!yarnOpen)}>
        <div class="edit-stack">
          <YarnFields yarn={form.yarn} />
          <TextField label={say('editor.notes')} value={form.notes} lines={3} onInput={type('notes')} />
        </div>
      </Fold>
    </section>
  );
}
