import { design, drafted, setOwn } from '../../app/drafts/design/designer.ts';
import { type Design, type Ease, USUAL_OPENING_MM } from '../../knit/garment/design.ts';
import type { Draft } from '../../knit/garment/draft.ts';
import { armholes } from '../../knit/garment/kinds/armholes.ts';
import { garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { sleeveTops } from '../../knit/garment/kinds/sleeve-tops.ts';
import { openingOf, possibleOpenings } from '../../knit/garment/which-opening.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { DesignLength } from './at-field.tsx';
import { saysName } from './says-name.ts';
import { faultAt } from './troubles.ts';

const askedSleeve = ({ roundings, targets }: Draft): number =>
  roundings.find(({ measure }) => measure === 'sleeve length')?.askedMm ?? targets.sleeve;

/** Lengths and widths: worked out from the body until she types. */
export function Figures() {
  const wished = design.value;
  if (!wished) return null;
  const { neck } = wished;
  const { toNeck, asksUnderarm, sleeveTop } = armholes[wished.armhole];
  const made = drafted.value;
  const { sleeves } = garmentKinds[wished.kind];
  const sleeve = wished.sleeve.lengthMm ?? (made?.ok ? askedSleeve(made.value) : wished.body.arm);
  const underarm = wished.underarmMm ?? (made?.ok ? made.value.targets.underarmStep : 0);
  const says = Number.isFinite(wished.lengthMm)
    ? `${say('draft.lengthMm')} ${saysLength(wished.lengthMm)}`
    : undefined;
  return (
    <Group title={say('draft.figures')} says={says}>
      <div class="draft-grid">
        <DesignLength
          label={say('draft.lengthMm')}
          hint={say('draft.lengthHint')}
          mm={wished.lengthMm}
          path="lengthMm"
        />
        <DesignLength label={say('draft.neckWidth')} mm={neck.widthMm} path="neck.widthMm" />
        <DesignLength label={say('draft.neckDepth')} mm={neck.depthMm} path="neck.depthMm" />
        {!toNeck && (
          <DesignLength label={say('draft.backNeckDepth')} mm={neck.backDepthMm} path="neck.backDepthMm" />
        )}
        {!garmentKinds[wished.kind].open && <Opening wished={wished} />}
        <DesignLength
          label={say('draft.shoulderDrop')}
          hint={say('draft.shoulderDropHint')}
          mm={wished.shoulderDropMm}
          path="shoulderDropMm"
        />
        {asksUnderarm && (
          <DesignLength
            label={say('draft.underarmStep')}
            hint={say('draft.underarmHint')}
            mm={underarm}
            path="underarmMm"
          />
        )}
        {sleeves && <DesignLength label={say('draft.sleeveLength')} mm={sleeve} path="sleeve.lengthMm" />}
        {sleeves && sleeveTops[sleeveTop].takesEase && <CapEase percent={wished.sleeve.capEase} />}
        {sleeves && sleeveTops[sleeveTop].takesEase && wished.sleeve.capTopMm !== undefined && (
          <DesignLength
            label={say('draft.capTop')}
            hint={say('draft.capTopHint')}
            mm={wished.sleeve.capTopMm}
            path="sleeve.capTopMm"
          />
        )}
      </div>
    </Group>
  );
}

/** How the neck opens so that a head passes. */
function Opening({ wished }: { readonly wished: Design }) {
  const { neck } = wished;
  const { partsBack, opensRaglan } = openingOf(wished);
  const possible = possibleOpenings(wished);
  const now = neck.opening ?? 'none';
  return (
    <>
      <Choice
        label={say('draft.neckOpening')}
        value={possible.includes(now) ? now : 'none'}
        options={possible.map((value) => ({ value, label: saysName(`opening ${value}`) }))}
        onChange={(value) => setOwn('neck.opening', value)}
      />
      {(partsBack || opensRaglan) && (
        <DesignLength
          label={say(partsBack ? 'draft.openingDepth' : 'draft.openingRaglanDepth')}
          mm={neck.openingMm ?? USUAL_OPENING_MM}
          path="neck.openingMm"
        />
      )}
    </>
  );
}

function CapEase({ percent }: { readonly percent: number }) {
  const wrong = faultAt('sleeve.capEase');
  return (
    <NumberField
      label={say('draft.capEase')}
      error={wrong && saysFault(wrong)}
      value={Number.isFinite(percent) ? percent : undefined}
      decimals
      signed
      onChange={(typed) => setOwn('sleeve.capEase', typed ?? null)}
    />
  );
}

const eases = [
  ['chest', 'draft.easeChest'],
  ['waist', 'draft.easeWaist'],
  ['hip', 'draft.easeHip'],
  ['crossBack', 'draft.easeCrossBack'],
  ['armholeDepth', 'draft.easeArmholeDepth'],
  ['upperArm', 'draft.easeUpperArm'],
  ['wrist', 'draft.easeWrist'],
] as const satisfies readonly (readonly [keyof Ease, Parameters<typeof say>[0]])[];

export function EaseFigures() {
  const wished = design.value;
  if (!wished) return null;
  const says = Number.isFinite(wished.ease.chest)
    ? `${say('draft.easeChest')} ${saysLength(wished.ease.chest)}`
    : undefined;
  return (
    <Group title={say('draft.ease')} says={says}>
      <p class="quiet">{say('draft.easeHint')}</p>
      <div class="draft-grid draft-narrow">
        {eases.map(([name, label]) => (
          <DesignLength
            key={name}
            label={say(label)}
            mm={wished.ease[name]}
            path={`ease.${name}`}
            signed
            bare
          />
        ))}
      </div>
    </Group>
  );
}
