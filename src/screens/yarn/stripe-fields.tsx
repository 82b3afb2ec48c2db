import type { Stripe } from '../../knit/yarn/stripes.ts';
import { Button } from '../../ui/button/button.tsx';
import { IconButton } from '../../ui/button/icon-button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { say } from '../../words/say.ts';

interface StripeFieldsProps {
  readonly stripes: readonly Stripe[];
  /** from what is there by then: two changes may follow each other faster than a drawing */
  readonly onChange: (how: (now: readonly Stripe[]) => readonly Stripe[]) => void;
  /** with every letter of a colour's name, before its field is left; what is shown of the stripes follows it */
  readonly onTyped: (how: (now: readonly Stripe[]) => readonly Stripe[]) => void;
}

/** Rows of each colour in turn; needs the catalogue 'yarn'. */
export function StripeFields({ stripes, onChange, onTyped }: StripeFieldsProps) {
  const edited = (at: number, typed: Partial<Stripe>) => (now: readonly Stripe[]) =>
    now.map((old, i) => (i === at ? { ...old, ...typed } : old));
  return (
    <>
      {stripes.map((stripe, i) => (
        <div class="stripe-entry" key={i}>
          <div class="stripe-figures">
            <TextField
              label={say('yarn.stripeColour', { n: i + 1 })}
              value={stripe.colour}
              maxLength={60}
              onInput={(colour) => onTyped(edited(i, { colour }))}
              onChange={(colour) => onChange(edited(i, { colour }))}
            />
            <NumberField
              label={say('yarn.stripeRows', { n: i + 1 })}
              value={stripe.rows}
              min={1}
              onChange={(rows) => rows !== undefined && rows > 0 && onChange(edited(i, { rows }))}
            />
          </div>
          <IconButton
            icon="trash"
            label={say('yarn.removeStripe', { n: i + 1 })}
            onPress={() => onChange((now) => now.filter((_, at) => at !== i))}
          />
        </div>
      ))}
      <Button
        icon="plus"
        onPress={() =>
          onChange((now) => [...now, { colour: say('yarn.stripeColour', { n: now.length + 1 }), rows: 2 }])
        }
      >
        {say('yarn.addStripe')}
      </Button>
    </>
  );
}
