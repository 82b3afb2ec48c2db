import { asItStands } from '../../app/garments/as-it-stands.ts';
import type { GarmentView } from '../../app/state.ts';
import { gaugeIn } from '../../knit/piece/planned.ts';
import { heldMetresPerGram, yarnPerStitch } from '../../knit/yarn/per-stitch.ts';
import { stripedThrough } from '../../knit/yarn/striped-through.ts';
import { coloursOf, loopsByColour, type Stripe, type Striped } from '../../knit/yarn/stripes.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { Group } from '../../ui/group/group.tsx';
import { saysGrams, saysYarnLength } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import type { ChangeYarn } from './change-yarn.ts';
import { StripedRows } from './striped-rows.tsx';

/** Stripes by rows, with the yarn that each colour needs. */
export function StripesCard({ view, change }: { readonly view: GarmentView; readonly change: ChangeYarn }) {
  const stripes = view.garment.stripes ?? [];
  // from what is stored, not from what was drawn: two changes may follow each other faster than a drawing
  const put = (how: (now: readonly Stripe[]) => readonly Stripe[]) =>
    change((now) => ({ ...now, stripes: how(now.stripes ?? []) }));
  const edit = (at: number, typed: Partial<Stripe>) =>
    put((now) => now.map((old, i) => (i === at ? { ...old, ...typed } : old)));
  return (
    <Group title={say('yarn.stripes')} says={stripes.map(({ colour }) => colour).join(', ')}>
      <p>{say('yarn.stripesHint')}</p>
      {stripes.map((stripe, i) => (
        <div class="yarn-pair" key={i}>
          <TextField
            label={say('yarn.stripeColour', { n: i + 1 })}
            value={stripe.colour}
            maxLength={60}
            onChange={(colour) => edit(i, { colour })}
          />
          <NumberField
            label={say('yarn.stripeRows', { n: i + 1 })}
            value={stripe.rows}
            min={1}
            onChange={(rows) => rows !== undefined && rows > 0 && edit(i, { rows })}
          />
          <IconButton
            icon="trash"
            label={say('yarn.removeStripe', { n: i + 1 })}
            onPress={() => put((now) => now.filter((_, at) => at !== i))}
          />
        </div>
      ))}
      <Button
        icon="plus"
        onPress={() =>
          change((now) => {
            const { stripes: before = [], striped } = now;
            const added = { colour: say('yarn.stripeColour', { n: before.length + 1 }), rows: 2 };
            // stripes that were there before stay where they were shown
            const lies = before.length === 0 ? through(view) : striped;
            return { ...now, stripes: [...before, added], ...(lies && { striped: lies }) };
          })
        }
      >
        {say('yarn.addStripe')}
      </Button>
      {stripes.length > 0 && (
        <StripedRows
          view={view}
          change={change}
          onLay={() => change((now) => ({ ...now, striped: through(view) }))}
        />
      )}
      {stripes.length > 0 && (
        <ul class="yarn-lines">
          {[...metresByColour(view)].map(([colour, metres]) => (
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
    for (const [part, parts] of piece.makes.flatMap((make) =>
      make.parts.map((p) => [p, make.parts] as const),
    )) {
      const last = Math.max(0, part.sections.length - 1);
      const fabric = part.sections[last]?.fabric ?? 'stocking';
      const { mm } = yarnPerStitch(fabric, gaugeIn(part, last), garment.swatches, garment.yarns?.[0]);
      for (const [colour, loops] of loopsByColour(part, coloursOf(garment, piece.id, parts, part))) {
        metres.set(colour, (metres.get(colour) ?? 0) + (loops * mm) / 1000);
      }
    }
  }
  return metres;
}
