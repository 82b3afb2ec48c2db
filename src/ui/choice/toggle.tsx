import './choice.css';
import { useId } from 'preact/hooks';

export interface ToggleProps {
  readonly label: string;
  readonly hint?: string | undefined;
  readonly on: boolean;
  readonly disabled?: boolean | undefined;
  readonly onChange: (on: boolean) => void;
}

export function Toggle({ label, hint, on, disabled, onChange }: ToggleProps) {
  const id = useId();
  return (
    <div class="toggle">
      <label class="toggle-label">
        <span>{label}</span>
        <input
          type="checkbox"
          role="switch"
          checked={on}
          aria-checked={on}
          disabled={disabled}
          aria-describedby={hint ? `${id}-hint` : undefined}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
      </label>
      {hint && (
        <p class="choice-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
