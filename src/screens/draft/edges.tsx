import type { ComponentChildren } from 'preact';
import { design, drafted, form, setOwn } from '../../app/drafts/design/designer.ts';
import type { Design, Ease } from '../../knit/garment/design.ts';
import type { Draft } from '../../knit/garment/draft.ts';
import { armholeKinds, armholes } from '../../knit/garment/kinds/armholes.ts';
import { garmentKinds } from '../../knit/garment/kinds/garments.ts';
import { neckShapes, necks } from '../../knit/garment/kinds/necks.ts';
import { silhouetteFacts, silhouettes } from '../../knit/garment/kinds/silhouettes.ts';
import { sleeveShapeFacts, sleeveShapes } from '../../knit/garment/kinds/sleeve-shapes.ts';
import { sleeveTops } from '../../knit/garment/kinds/sleeve-tops.ts';
import { openingOf } from '../../knit/garment/which-opening.ts';
import { NumberField } from '../../ui/field/number-field.tsx';
import { saysFault } from '../../words/fault.ts';
import { say } from '../../words/say.ts';
import { DesignLength, FaultAt } from './at-field.tsx';
import { BorderFields, Buttons, HemCount, Mitre } from './borders.tsx';
import { choose, drawn } from './choose.ts';
import { drawnArmhole, drawnNeck, drawnSilhouette, drawnSleeve } from './drawn-choices.ts';
import { Fold } from './fold.tsx';
import type { EdgeName } from './garment-drawn.ts';
import { closeOtherEdges } from './go-to-field.ts';
import { NeckMiddle, NeckOpening } from './neck-opening.tsx';
import { saysName } from './says-name.ts';
import { Tiles } from './tiles.tsx';
import { faultAt } from './troubles.ts';

interface EdgesProps {
  readonly onToggle: (edge: EdgeName, isOpen: boolean) => void;
}

/** Every edge of the garment with its shape, its lengths and its border, in the order in which it is worn. */
export function Edges({ onToggle }: EdgesProps) {
  const now = form.value;
  const wished = design.value;
  if (!now || !wished) return null;
  const { kind, armhole, neck } = now.choices;
  const { sleeves, open } = garmentKinds[kind];
  const { shape } = wished.sleeve;
  const edge = (name: EdgeName, title: string, says: string | undefined, inside: ComponentChildren) => (
    // biome-ignore lint/a11y/noStaticElementInteractions lint/a11y/useKeyWithClickEvents: hears the summary's own
    <div class="draft-edge-group" data-edge={name} onClick={(event) => closeOthers(event)}>
      <Fold title={title} says={says} onToggle={(isOpen) => onToggle(name, isOpen)}>
        {inside}
      </Fold>
    </div>
  );
  return (
    <div class="draft-edges">
      {edge('neck', say('draft.neckShape'), saysName(neck), <Neck wished={wished} />)}
      {edge('armhole', say('draft.armhole'), saysName(armhole), <Armhole wished={wished} />)}
      {edge('side', say('draft.sides'), saysName(wished.silhouette), <Side wished={wished} />)}
      {sleeves && edge('sleeve', say('draft.sleeveShape'), saysName(shape), <Sleeve wished={wished} />)}
      {edge('hem', say('draft.hem'), undefined, <Hem wished={wished} />)}
      {(open || openingOf(wished).partsFront) &&
        edge('band', say('draft.frontBand'), undefined, <Band wished={wished} />)}
    </div>
  );
}

function closeOthers({ target, currentTarget }: MouseEvent): void {
  if ((target as Element).closest('summary')) closeOtherEdges(currentTarget as Element);
}

interface EdgeProps {
  readonly wished: Design;
}

function Neck({ wished }: EdgeProps) {
  const { neck } = wished;
  const { open } = garmentKinds[wished.kind];
  return (
    <>
      <Tiles
        label={say('draft.neckShape')}
        isTitled
        value={neck.shape}
        options={drawn(neckShapes, necks, drawnNeck)}
        onChange={(value) => choose({ neck: value })}
      />
      <div class="draft-grid">
        <DesignLength label={say('draft.neckWidth')} mm={neck.widthMm} path="neck.widthMm" />
        <DesignLength label={say('draft.neckDepth')} mm={neck.depthMm} path="neck.depthMm" />
        {!armholes[wished.armhole].toNeck && (
          <DesignLength label={say('draft.backNeckDepth')} mm={neck.backDepthMm} path="neck.backDepthMm" />
        )}
      </div>
      {!open && <NeckOpening wished={wished} />}
      <NeckMiddle wished={wished} />
      <BorderFields name="neckband" wished={wished} />
      <Mitre wished={wished} />
    </>
  );
}

function Armhole({ wished }: EdgeProps) {
  const { asksUnderarm } = armholes[wished.armhole];
  const made = drafted.value;
  const underarm = wished.underarmMm ?? (made?.ok ? made.value.targets.underarmStep : 0);
  return (
    <>
      <Tiles
        label={say('draft.armhole')}
        isTitled
        value={wished.armhole}
        options={drawn(armholeKinds, armholes, drawnArmhole)}
        onChange={(value) => choose({ armhole: value })}
      />
      <Eases wished={wished} names={['armholeDepth', 'crossBack']} />
      <div class="draft-grid">
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
      </div>
      {!garmentKinds[wished.kind].sleeves && <BorderFields name="armholeBand" wished={wished} />}
    </>
  );
}

function Side({ wished }: EdgeProps) {
  return (
    <>
      <Tiles
        label={say('draft.silhouette')}
        isTitled
        value={wished.silhouette}
        options={drawn(silhouettes, silhouetteFacts, drawnSilhouette)}
        onChange={(value) => setOwn('silhouette', value)}
      />
      <FaultAt path="silhouette" />
      <DesignLength
        label={say('draft.lengthMm')}
        hint={say('draft.lengthHint')}
        mm={wished.lengthMm}
        path="lengthMm"
      />
      <Eases wished={wished} names={['chest', 'waist', 'hip']} />
    </>
  );
}

const askedSleeve = ({ roundings, targets }: Draft): number =>
  roundings.find(({ measure }) => measure === 'sleeve length')?.askedMm ?? targets.sleeve;

function Sleeve({ wished }: EdgeProps) {
  const made = drafted.value;
  const { sleeve } = wished;
  const length = sleeve.lengthMm ?? (made?.ok ? askedSleeve(made.value) : wished.body.arm);
  const { takesEase } = sleeveTops[armholes[wished.armhole].sleeveTop];
  return (
    <>
      <Tiles
        label={say('draft.sleeveShape')}
        isTitled
        value={sleeve.shape}
        options={drawn(sleeveShapes, sleeveShapeFacts, drawnSleeve)}
        onChange={(value) => setOwn('sleeve.shape', value)}
      />
      <FaultAt path="sleeve.shape" />
      <DesignLength label={say('draft.sleeveLength')} mm={length} path="sleeve.lengthMm" />
      <Eases wished={wished} names={['upperArm', 'wrist']} />
      <div class="draft-grid">
        {takesEase && <CapEase percent={sleeve.capEase} />}
        {takesEase && sleeve.capTopMm !== undefined && (
          <DesignLength
            label={say('draft.capTop')}
            hint={say('draft.capTopHint')}
            mm={sleeve.capTopMm}
            path="sleeve.capTopMm"
          />
        )}
      </div>
      <BorderFields name="cuff" wished={wished} />
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

const Hem = ({ wished }: EdgeProps) => (
  <>
    <BorderFields name="hem" wished={wished} />
    <HemCount wished={wished} />
  </>
);

const Band = ({ wished }: EdgeProps) => (
  <>
    <BorderFields name="frontBand" wished={wished} />
    <Buttons wished={wished} />
  </>
);

const eases = {
  chest: 'draft.easeChest',
  waist: 'draft.easeWaist',
  hip: 'draft.easeHip',
  crossBack: 'draft.easeCrossBack',
  armholeDepth: 'draft.easeArmholeDepth',
  upperArm: 'draft.easeUpperArm',
  wrist: 'draft.easeWrist',
} as const satisfies Readonly<Record<keyof Ease, string>>;

/** How much wider the garment is there than the body. */
function Eases({ wished, names }: EdgeProps & { readonly names: readonly (keyof Ease)[] }) {
  return (
    <fieldset class="choice">
      <legend class="choice-legend">{say('draft.ease')}</legend>
      <div class="draft-grid draft-narrow">
        {names.map((name) => (
          <DesignLength
            key={name}
            label={say(eases[name])}
            mm={wished.ease[name]}
            path={`ease.${name}`}
            signed
            bare
          />
        ))}
      </div>
    </fieldset>
  );
}
