import { NumberField } from '../../ui/field/number-field.tsx';
import { lengthToType, lengthTyped, lengthUnit, saysTyped } from '../../words/measures.ts';

interface CountProps {
  readonly label: string;
  readonly value: number | null;
  readonly error?: string | undefined;
  readonly onChange: (value: number | null) => void;
}

/** Halves are counted too; no stepping buttons, a count is typed. */
export function Count({ label, value, error, onChange }: CountProps) {
  return (
    <NumberField
      bare
      decimals
      label={label}
      error={error}
      value={value ?? undefined}
      onChange={(typed) => onChange(typed ?? null)}
    />
  );
}

export function Measure({
  label,
  mm,
  error,
  onChange,
}: {
  readonly label: string;
  readonly mm: number | null;
  readonly error?: string | undefined;
  readonly onChange: CountProps['onChange'];
}) {
  return (
    <NumberField
      bare
      decimals
      label={label}
      unit={lengthUnit()}
      says={saysTyped}
      error={error}
      value={mm === null ? undefined : lengthToType(mm)}
      onChange={(typed) => onChange(typed === undefined ? null : lengthTyped(typed))}
    />
  );
}
