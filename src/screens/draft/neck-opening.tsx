import { drafted, setOwn } from '../../app/drafts/design/designer.ts';
import { type Design, USUAL_OPENING_MM } from '../../knit/garment/design.ts';
import { openingOf, possibleOpenings } from '../../knit/garment/which-opening.ts';
import { Choice } from '../../ui/choice/choice.tsx';
import { say } from '../../words/say.ts';
import { DesignLength } from './at-field.tsx';
import { saysHead } from './says-head.ts';
import { saysName } from './says-name.ts';

/** How the neck opens so that a head passes. */
export function NeckOpening({ wished }: { readonly wished: Design }) {
  const { neck } = wished;
  const { partsBack, opensRaglan } = openingOf(wished);
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
      {(partsBack || opensRaglan) && (
        <DesignLength
          label={say(partsBack ? 'draft.openingDepth' : 'draft.openingRaglanDepth')}
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
