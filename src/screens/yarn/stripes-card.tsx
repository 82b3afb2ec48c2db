import { useState } from 'preact/hooks';
import { asItStands } from '../../app/garments/as-it-stands.ts';
import type { GarmentView } from '../../app/state.ts';
import { gaugeIn } from '../../knit/piece/planned.ts';
import { heldMetresPerGram, yarnPerStitch } from '../../knit/yarn/per-stitch.ts';
import { stripedThrough } from '../../knit/yarn/striped-through.ts';
import { coloursOf, isStriped, loopsByColour, type Stripe, type Striped } from '../../knit/yarn/stripes.ts';
import { Group } from '../../ui/group/group.tsx';
import { saysGrams, saysYarnLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import type { ChangeYarn } from './change-yarn.ts';
import { StripeFields } from './stripe-fields.tsx';
import { StripedRows } from './striped-rows.tsx';

/** Stripes by rows, with the yarn that each colour needs. */
export function StripesCard({ view, change }: { readonly view: GarmentView; readonly change: ChangeYarn }) {
  const stripes = view.garment.stripes ?? [];
  // a name that is being typed is written when its field is left, and shown from its first letter on
  const [typed, setTyped] = useState<{ readonly of: readonly Stripe[]; readonly as: readonly Stripe[] }>();
  const named = typed?.of === stripes ? typed.as : stripes;
  const shown = { ...view, garment: { ...view.garment, stripes: named } };
  // stripes that were there before stay where they were shown
  const put = (how: (now: readonly Stripe[]) => readonly Stripe[]) =>
    change((now) => {
      const { stripes: before = [], striped } = now;
      const lies = before.length === 0 ? through(view) : striped;
      return { ...now, stripes: how(before), ...(lies && { striped: lies }) };
    });
  return (
    <Group title={say('yarn.stripes')} says={named.map(({ colour }) => colour).join(', ')}>
      <p>{say('yarn.stripesHint')}</p>
      <StripeFields
        stripes={stripes}
        onChange={put}
        onTyped={(how) => setTyped({ of: stripes, as: how(named) })}
      />
      {stripes.length > 0 && (
        <StripedRows
          view={view}
          change={change}
          onLay={() => change((now) => ({ ...now, striped: through(view) }))}
        />
      )}
      {isStriped(view.garment) && (
        <ul class="yarn-lines">
          {[...metresByColour(shown)].map(([colour, metres]) => (
            <li key={colour}>{say('yarn.stripeNeed', { colour, amount: saysNeed(view, metres) })}</li>
          ))}
        </ul>
      )}
    </Group>
  );
}

/** Where the stripes lie in each piece when they are laid through the garment, by the piece's id. */
function through(view: GarmentView): Readonly<Record<string, Striped>> {
  const byName = stripedThrough(asItStands(view));
  return Object.fromEntries(
    view.pieces.flatMap(({ id, recipe }): [string, Striped][] => {
      const own = byName.get(recipe.name);
      return own ? [[id, own]] : [];
    }),
  );
}

function saysNeed({ garment }: GarmentView, metres: number): string {
  const yarn = garment.yarns?.[0];
  const perGram = yarn && heldMetresPerGram(yarn);
  return perGram === undefined
    ? saysYarnLength(metres)
    : `${saysGrams(metres / perGram)}, ${saysYarnLength(metres)}`;
}

/** Every make of every part, its main fabric standing for the whole of it. */
function metresByColour(view: GarmentView): ReadonlyMap<string, number> {
  const metres = new Map<string, number>();
  const { garment } = view;
  for (const piece of view.pieces) {
    for (const [part, parts, make] of piece.makes.flatMap((one) =>
      one.parts.map((p) => [p, one.parts, one.make] as const),
    )) {
      const last = Math.max(0, part.sections.length - 1);
      const fabric = part.sections[last]?.fabric ?? 'stocking';
      const { mm } = yarnPerStitch(fabric, gaugeIn(part, last), garment.swatches, garment.yarns?.[0]);
      for (const [colour, loops] of loopsByColour(part, coloursOf(garment, piece.id, parts, part, make))) {
        metres.set(colour, (metres.get(colour) ?? 0) + (loops * mm) / 1000);
      }
    }
  }
  return metres;
}
