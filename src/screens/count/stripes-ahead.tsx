import { useState } from 'preact/hooks';
import { makeInHand } from '../../app/in-hand/make-in-hand.ts';
import {
  type Beside,
  besideFrom,
  restripedBy,
  type StripesWish,
  stripesInForce,
  takeStripes,
} from '../../app/in-hand/restripe.ts';
import { type GarmentView, garmentInHand, type InHand } from '../../app/state.ts';
import type { PlannedPart } from '../../knit/piece/planned.ts';
import { rowToStripe } from '../../knit/yarn/restripe.ts';
import { coloursOf } from '../../knit/yarn/stripes.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { saysList } from '../../words/numbers.ts';
import { say } from '../../words/say.ts';
import { saysMake } from '../says-make.ts';
import { StripeFields } from '../yarn/stripe-fields.tsx';
import { MakeDrawn } from './new-plan.tsx';
import { type Colours, StripesKey } from './stripes-drawn.tsx';

/** Changes of colour that are listed before an ellipsis. */
const MOST_CHANGES = 8;

interface StripesAheadProps {
  readonly now: InHand;
  readonly onTaken: () => void;
}

/** Other stripes for the rows not yet knitted: which, from where, and what lies beside them. */
export function StripesAhead({ now, onTaken }: StripesAheadProps) {
  const first = now.place.rows + 1;
  const usual = rowToStripe(now.part, first);
  const [before] = useState(() => stripesInForce(now));
  const [stripes, setStripes] = useState(before);
  const [typed, setTyped] = useState<number | undefined>(usual);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const view = garmentInHand.value;
  if (!view) return null;
  const row = Math.min(Math.max(typed ?? usual, first), now.part.rows.length);
  const wish = { stripes, row, left };
  // those in force from the needle on are no change, and none are none from wherever
  const isAsBefore = stripes === before && (row === usual || before.length === 0);
  const colours = coloursBy(view, now, isAsBefore ? undefined : wish);
  const parts = makeInHand()?.parts ?? [];
  const title = say(isAsBefore ? 'yarn.stripes' : 'count.newPlan');
  const leave = (key: string, stays: boolean) =>
    setLeft(new Set([...left].filter((one) => one !== key).concat(stays ? [key] : [])));
  return (
    <>
      <StripeFields stripes={stripes} onChange={setStripes} onTyped={setStripes} />
      {stripes.length === 0 && before.length > 0 && <p>{say('yarn.stripesNone')}</p>}
      <NumberField
        label={say('yarn.stripedFrom')}
        min={first}
        max={now.part.rows.length}
        value={typed}
        onChange={setTyped}
      />
      <Card tone={isAsBefore ? 'plain' : 'place'} label={title}>
        <div class="count-card">
          <h2>{title}</h2>
          <MakeDrawn now={now} row={isAsBefore ? undefined : row} colours={colours} />
          <StripesKey parts={parts} colours={colours} />
          {!isAsBefore && <p>{saysChanges(parts, now, row, colours)}</p>}
        </div>
      </Card>
      {!isAsBefore && (
        <>
          {besideFrom(view, now, row).map((one) => (
            <BesideIt key={one.key} one={one} stays={left.has(one.key)} onLeave={leave} />
          ))}
          <Button
            kind="main"
            wide
            onPress={() => void takeStripes(now, wish).then((done) => done && onTaken())}
          >
            {say('count.take')}
          </Button>
        </>
      )}
    </>
  );
}

/** The colours of the make in hand by a wish, or as they are. */
function coloursBy(view: GarmentView, now: InHand, wish: StripesWish | undefined): Colours {
  const { piece, make } = now.place;
  const parts = makeInHand()?.parts ?? [];
  const restriped = (wish && restripedBy(view, now, wish)) ?? view.garment.restriped;
  return (part) => coloursOf({ ...view.garment, ...(restriped && { restriped }) }, piece, parts, part, make);
}

interface BesideItProps {
  readonly one: Beside;
  readonly stays: boolean;
  readonly onLeave: (key: string, stays: boolean) => void;
}

/** A make that lies beside: whether it goes along, and what of it no longer can. */
function BesideIt({
  one: { key, name, make, recipe, from, knitted, isOpen },
  stays,
  onLeave,
}: BesideItProps) {
  const said = { piece: saysMake(name, '', make, recipe), row: from, last: from + knitted - 1 };
  const hint = knitted > 0 ? say('yarn.stripesKnitted', said) : '';
  if (!isOpen) return <p>{say('yarn.stripesDone', said)}</p>;
  return (
    <Toggle
      label={say('yarn.stripesThereToo', said)}
      hint={stays ? say('yarn.stripesApart', said) : hint}
      on={!stays}
      onChange={(on) => onLeave(key, !on)}
    />
  );
}

/** 'Row 41: woad, row 45: sand …': the colours of the part in hand from there on. */
function saysChanges(
  parts: readonly PlannedPart[],
  { place }: InHand,
  from: number,
  colours: Colours,
): string {
  const part = parts[place.part];
  if (!part) return '';
  const colour = colours(part);
  const changes = part.rows
    .map(({ n }) => ({ row: n, colour: colour(n) }))
    .filter((one) => one.row >= from && one.colour !== undefined)
    .filter((one) => one.row === from || one.colour !== colour(one.row - 1));
  const list = changes
    .slice(0, MOST_CHANGES)
    .map((one) => say('yarn.stripesRow', { row: one.row, colour: one.colour ?? '' }));
  return saysList(list) + (changes.length > MOST_CHANGES ? ' …' : '');
}
