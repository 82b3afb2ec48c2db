import { drafted, setOwn } from '../../app/drafts/design/designer.ts';
import type { FabricName } from '../../knit/fabric.ts';
import { type Design, holesInFronts } from '../../knit/garment/design.ts';
import { garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { necks } from '../../knit/garment/kinds/necks.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { saysFabric } from '../../words/craft.ts';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { DesignLength, FaultAt } from './at-field.tsx';
import { saysName } from './says-name.ts';
import { faultAt } from './troubles.ts';
import { worded } from './worded.ts';

const fabrics = [
  'rib 2x2',
  'rib 1x1',
  'rib 1x1 matched',
  'garter',
  'moss',
  'stocking',
] as const satisfies readonly FabricName[];

type BorderName = 'hem' | 'cuff' | 'neckband' | 'frontBand' | 'armholeBand';

/** Whether the hem has stitches of its own. */
export const HemCount = ({ wished }: { readonly wished: Design }) => (
  <>
    <Choice
      label={say('draft.hemCount')}
      value={wished.hem.count}
      options={worded(['fitted', 'as body'] as const)}
      onChange={(value) => setOwn('hem.count', value)}
    />
    <FaultAt path="hem.count" />
  </>
);

/** How a band goes round the point or the corners of a neck, where it has any. */
export function Mitre({ wished }: { readonly wished: Design }) {
  const { mitre } = necks[wished.neck.shape];
  if (mitre !== 'corners' && (mitre !== 'point' || garmentKinds[wished.kind].open)) return null;
  return (
    <Choice
      label={say('draft.mitre')}
      value={wished.neckband.mitre}
      options={worded(['every second row', 'every row'] as const)}
      onChange={(value) => setOwn('neckband.mitre', value)}
    />
  );
}

export function BorderFields({ name, wished }: { readonly name: BorderName; readonly wished: Design }) {
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

/** How far the button holes stand apart, as they are drafted now. */
function saysHoles(): string | undefined {
  const made = drafted.value;
  const gaps = made?.ok ? made.value.holeGaps : [];
  const [wide, each] = [Math.max(...gaps), Math.min(...gaps)];
  if (gaps.length === 0) return undefined;
  return wide === each ? say('draft.holesApart', { each }) : say('draft.holesUneven', { wide, each });
}

export function Buttons({ wished }: { readonly wished: Design }) {
  const { buttons, buttonMm, holesIn = 'right front' } = wished.frontBand;
  const wrong = faultAt('frontBand.buttons');
  // along a placket they are as many as its depth asks for
  const { open } = garmentKinds[wished.kind];
  return (
    <div class="draft-field">
      {open && (
        <NumberField
          label={say('draft.buttons')}
          hint={saysHoles()}
          error={wrong && saysFault(wrong)}
          value={Number.isFinite(buttons) ? buttons : undefined}
          min={0}
          max={60}
          onChange={(typed) => setOwn('frontBand.buttons', typed ?? null)}
        />
      )}
      {!wrong && <FaultAt path="frontBand.buttons" />}
      {(buttons > 0 || !open) && (
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
