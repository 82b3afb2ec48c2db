import { useState } from 'preact/hooks';
import { change, type Editor, garmentFaults } from '../../app/editor/editor.ts';
import { type GarmentForm, withGauge } from '../../app/editor/garment-form.ts';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { AddPiece } from './add-piece.tsx';
import { DraftNotice, SavedNotice } from './draft-notice.tsx';
import { Fold } from './fold.tsx';
import { PieceList } from './piece-list.tsx';
import { saysGarmentFault } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';
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
      <GarmentFields form={form} />
      <section class="edit-stack" aria-labelledby="edit-pieces">
        <h2 id="edit-pieces">{say('editor.pieces')}</h2>
        {form.pieces.length === 0 && <p>{say('editor.noPieces')}</p>}
        <PieceList form={form} begun={editor.begun} home={home} />
      </section>
      <AddPiece form={form} home={home} />
    </>
  );
}

function GarmentFields({ form }: { readonly form: GarmentForm }) {
  const [yarnOpen, setYarnOpen] = useState(false);
  const faults = garmentFaults.value;
  const type = (field: 'name' | 'notes' | 'needle') => (typed: string) =>
    change((old) => ({ ...old, [field]: typed }), field, `garment ${field}`);
  const gauge = (field: 'stitches' | 'rows') => (typed: string) =>
    change((old) => withGauge(old, { ...old.gauge, [field]: typed }), field, `gauge ${field}`);
  return (
    <section class="edit-stack" aria-label={say('editor.garment')}>
      <TextField
        label={say('editor.name')}
        hint={say('editor.garmentNameHint')}
        value={form.name}
        error={saysGarmentFault(faults, 'name')}
        onInput={type('name')}
      />
      <fieldset class="edit-group" aria-describedby="edit-gauge-hint">
        <legend>{say('editor.gauge')}</legend>
        <p class="field-hint" id="edit-gauge-hint">
          {say('editor.gaugeHint')}
        </p>
        <div class="edit-pair">
          <TypedNumber
            label={say('editor.gaugeStitches')}
            typed={form.gauge.stitches}
            decimals
            error={saysGarmentFault(faults, 'gauge stitches')}
            onTyped={gauge('stitches')}
          />
          <TypedNumber
            label={say('editor.gaugeRows')}
            typed={form.gauge.rows}
            decimals
            error={saysGarmentFault(faults, 'gauge rows')}
            onTyped={gauge('rows')}
          />
        </div>
      </fieldset>
      <TypedNumber
        label={say('editor.needle')}
        hint={say('editor.needleHint')}
        typed={form.needle}
        decimals
        error={saysGarmentFault(faults, 'needle')}
        onTyped={type('needle')}
      />
      <Fold head={say('editor.yarnAndNotes')} open={yarnOpen} onToggle={() => setYarnOpen(!yarnOpen)}>
        <div class="edit-stack">
          <YarnFields yarn={form.yarn} />
          <TextField label={say('editor.notes')} value={form.notes} lines={3} onInput={type('notes')} />
        </div>
      </Fold>
    </section>
  );
}
