import { change, garmentFaults } from '../../app/drafts/editor/editor.ts';
import type { YarnForm } from '../../app/drafts/editor/garment-form.ts';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';
import { saysGarmentFault } from './says-here.ts';
import { TypedNumber } from './typed-number.tsx';

export function YarnFields({ yarn }: { readonly yarn: YarnForm }) {
  const type = (field: keyof YarnForm) => (typed: string) =>
    change((form) => ({ ...form, yarn: { ...form.yarn, [field]: typed } }), field, `yarn ${field}`);
  const number = (field: 'grams' | 'metres' | 'balls', label: string) => (
    <TypedNumber
      label={label}
      typed={yarn[field]}
      decimals={field !== 'balls'}
      error={saysGarmentFault(garmentFaults.value, `yarn ${field}`)}
      onTyped={type(field)}
    />
  );
  return (
    <>
      <TextField label={say('editor.yarnName')} value={yarn.name} onInput={type('name')} />
      <TextField label={say('editor.fibre')} value={yarn.fibre} onInput={type('fibre')} />
      <div class="edit-pair">
        <TextField label={say('editor.colour')} value={yarn.colour} onInput={type('colour')} />
        <TextField label={say('editor.dyeLot')} value={yarn.dyeLot} onInput={type('dyeLot')} />
      </div>
      <div class="edit-pair">
        {number('grams', say('editor.grams'))}
        {number('metres', say('editor.metres'))}
      </div>
      {number('balls', say('editor.balls'))}
    </>
  );
}
