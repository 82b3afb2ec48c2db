import type { InputTies } from './field.tsx';

export interface SelectProps<T extends string> {
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly label: string }[];
  readonly onChange: (value: T) => void;
}

interface TiedProps<T extends string> extends SelectProps<T> {
  /** to its label and to what is said of it */
  readonly ties: InputTies & { readonly 'aria-label'?: string };
  readonly look?: string;
}

/** The bare choice, in a field or in a sentence. */
export function Select<T extends string>({ ties, look = '', value, options, onChange }: TiedProps<T>) {
  return (
    <select
      {...ties}
      class={`field-input ${look}`.trim()}
      value={value}
      onChange={(event) => onChange(event.currentTarget.value as T)}
    >
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
  );
}
