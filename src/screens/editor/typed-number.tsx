import { Field, type FieldWords } from '../../ui/field/field.tsx';

export interface TypedNumberProps extends FieldWords {
  /** as it was typed, right or wrong */
  readonly typed: string;
  readonly unit?: string;
  readonly decimals?: boolean;
  /** more than one number: '4, 3, 2' */
  readonly list?: boolean;
  readonly onTyped: (typed: string) => void;
}

/** A number that stays as she types it, even while it is none. */
export function TypedNumber(props: TypedNumberProps) {
  const { label, hint, error, typed, unit, decimals = false, list = false, onTyped } = props;
  return (
    <Field label={label} hint={hint} error={error}>
      {(ties) => (
        <div class="number-row">
          <input
            {...ties}
            class={`field-input ${list ? 'edit-list-input' : 'number-input'}`}
            type="text"
            inputMode={list ? 'text' : decimals ? 'decimal' : 'numeric'}
            autocomplete="off"
            value={decimals ? shortened(typed) : typed}
            onInput={(event) => onTyped(event.currentTarget.value)}
          />
          {unit && <span class="number-unit">{unit}</span>}
        </div>
      )}
    </Field>
  );
}

/** A gauge reckoned from a swatch has a long tail of digits; two are shown, all are kept until she types. */
export const shortened = (typed: string): string =>
  /^\d+\.\d{4,}$/.test(typed) ? String(Math.round(Number(typed) * 100) / 100) : typed;
