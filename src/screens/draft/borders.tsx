import { design, setOwn } from '../../app/drafts/design/designer.ts';
import type { FabricName } from '../../knit/fabric.ts';
import { type Design, holesInFronts } from '../../knit/garment/design.ts';
import { garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { necks } from '../../knit/garment/kinds/necks.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { DesignLength, FaultAt } from './at-field.tsx';
import { saysName } from './says-name.ts';
import { faultAt } from './troubles.ts';

const fabrics = [
  'rib 2x2',
  'rib 1x1',
  'rib 1x1 matched',
  'garter',
  'moss',
  'stocking',
] as const satisfies readonly FabricName[];

type BorderName = 'hem' | 'cuff' | 'neckband' | 'frontBand' | 'armholeBand';

export function Borders() {
  const wished = design.value;
  if (!wished) return null;
  const { sleeves, open } = garmentKinds[wished.kind];
  const { mitre } = necks[wished.neck.shape];
  return (
    <Group title={say('draft.borders')}>
      <BorderFields name="hem" wished={wished} />
      <Choice
        label={say('draft.hemCount')}
        value={wished.hem.count}
        options={(['fitted', 'as body'] as const).map((value) => ({ value, label: saysName(value) }))}
        onChange={(value) => setOwn('hem.count', value)}
      />
      <FaultAt path="hem.count" />
      {sleeves && <BorderFields name="cuff" wished={wished} />}
      <BorderFields name="neckband" wished={wished} />
      {(mitre === 'corners' || (mitre === 'point' && !open)) && (
        <Choice
          label={say('draft.mitre')}
          value={wished.neckband.mitre}
          options={(['every second row', 'every row'] as const).map((value) => ({
            value,
            label: saysName(value),
          }))}
          onChange={(value) => setOwn('neckband.mitre', value)}
        />
      )}
      {open && <BorderFields name="frontBand" wished={wished} />}
      {open && <Buttons wished={wished} />}
      {!sleeves && <BorderFields name="armholeBand" wished={wished} />}
    </Group>
  );
}

function BorderFields({ name, wished }: { readonly name: BorderName; readonly wished: Design }) {
  const border = say(`draft.${name}`);
  return (
    <div class="draft-grid">
      <DesignLength
        label={say('draft.borderHeight', { border })}
        mm={wished[name].heightMm}
        path={`${name}.heightMm`}
      />
      <SelectField
        label={say('draft.borderFabric', { border })}
        value={wished[name].fabric}
        options={fabrics.map((value) => ({ value, label: saysFabric(value) }))}
        onChange={(value) => setOwn(`${name}.fabric`, value)}
      />
    </div>
  );
}

function Buttons({ wished }: { readonly wished: Design }) {
  const { buttons, buttonMm, holesIn = 'right front' } = wished.frontBand;
  const wrong = faultAt('frontBand.buttons');
  return (
    <div class="draft-field">
      <NumberField
        label={say('draft.buttons')}
        error={wrong && saysFault(wrong)}
        value={Number.isFinite(buttons) ? buttons : undefined}
        min={0}
        max={60}
        onChange={(typed) => setOwn('frontBand.buttons', typed ?? null)}
      />
      {!wrong && <FaultAt path="frontBand.buttons" />}
      {buttons > 0 && (
        <>
          <DesignLength
            label={say('draft.buttonSize')}
            mm={buttonMm ?? Number.NaN}
            path="frontBand.buttonMm"
          />
          <Choice
            label={say('draft.holesIn')}
            value={holesIn}
            options={holesInFronts.map((value) => ({ value, label: saysName(value) }))}
            onChange={(value) => setOwn('frontBand.holesIn', value)}
          />
        </>
      )}
    </div>
  );
}
