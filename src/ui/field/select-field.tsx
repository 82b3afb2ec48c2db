import { Field, type FieldWords } from './field.tsx';
import { Select, type SelectProps } from './select.tsx';

export interface SelectFieldProps<T extends string> extends FieldWords, SelectProps<T> {}

/** For a choice of more than five; fewer stand open in a Choice. */
export function SelectField<T extends string>({ label, hint, error, ...choice }: SelectFieldProps<T>) {
  return (
    <Field label={label} hint={hint} error={error}>
      {(ties) => <Select {...choice} ties={ties} />}
    </Field>
  );
}
