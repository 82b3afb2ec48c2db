import { Field, type FieldWords } from './field.tsx';

export interface SelectFieldProps<T extends string> extends FieldWords {
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
}

/** For a choice of more than five; fewer stand open in a Choice. */
export function SelectField<T extends string>({
  label,
  hint,
  error,
  value,
  options,
  onChange,
}: SelectFieldProps<T>) {
  return (
    <Field label={label} hint={hint} error={error}>
      {(ties) => (
        <select
          {...ties}
          class="field-input"
          value={value}
          onChange={(event) => onChange(event.currentTarget.value as T)}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
