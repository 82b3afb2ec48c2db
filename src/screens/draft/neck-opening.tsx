import { drafted, setOwn } from '../../app/drafts/design/designer.ts';
import { type Design, USUAL_OPENING_MM } from '../../knit/garment/design.ts';
import { heldNeck } from '../../knit/garment/held-neck.ts';
import { neckMiddles } from '../../knit/garment/kinds/necks.ts';
import { openingOf, possibleOpenings } from '../../knit/garment/which-opening.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { say } from '../../words/say.ts';
import { DesignLength } from './at-field.tsx';
import { saysHead } from './says-head.ts';
import { saysName } from './says-name.ts';

/** What becomes of the middle of a neck, where a band could go on from it. */
export function NeckMiddle({ wished }: { readonly wished: Design }) {
  const { middle = 'bind off' } = wished.neck;
  const held = heldNeck({ ...wished, neck: { ...wished.neck, middle: 'hold' } });
  if (!held.front && !held.back && !held.sleeves) return null;
  return (
    <Choice
      label={say('draft.neckMiddle')}
      value={middle}
      options={neckMiddles.map((value) => ({ value, label: saysName(`middle ${value}`) }))}
      onChange={(value) => setOwn('neck.middle', value)}
    />
  );
}

/** How the neck opens so that a head passes. */
export function NeckOpening({ wished }: { readonly wished: Design }) {
  const { neck } = wished;
  const { partsBack, partsFront, opensRaglan } = openingOf(wished);
  const possible = possibleOpenings(wished);
  const now = neck.opening ?? 'none';
  const made = drafted.value;
  const head = made?.ok ? made.value.head : undefined;
  return (
    <>
      <Choice
        label={say('draft.neckOpening')}
        value={possible.includes(now) ? now : 'none'}
        options={possible.map((value) => ({ value, label: saysName(`opening ${value}`) }))}
        onChange={(value) => setOwn('neck.opening', value)}
      />
      {(partsBack || partsFront || opensRaglan) && (
        <DesignLength
          label={say(
            partsFront
              ? 'draft.openingFrontDepth'
              : partsBack
                ? 'draft.openingDepth'
                : 'draft.openingRaglanDepth',
          )}
          mm={neck.openingMm ?? USUAL_OPENING_MM}
          path="neck.openingMm"
        />
      )}
      {/* what a change of the neck makes of it is read where it is changed */}
      {head && (
        <p class="quiet neck-verdict" role="status">
          {saysHead(head)}
        </p>
      )}
    </>
  );
}
