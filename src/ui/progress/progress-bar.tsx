import './progress-bar.css';

export interface ProgressBarProps {
  /** what goes forward: 'Back' */
  readonly label: string;
  /** said instead of a bare per cent: 'row 41 of 120' */
  readonly valueText: string;
  readonly value: number;
  readonly max: number;
  /** places (in the unit of `value`) that deserve a mark: the shaping rows ahead, the ends of sections */
  readonly marks?: readonly number[] | undefined;
}

/** A strip of knitting that fills from its start. */
export function ProgressBar({ label, valueText, value, max, marks = [] }: ProgressBarProps) {
  const part = (at: number) => `${max > 0 ? (100 * Math.min(max, Math.max(0, at))) / max : 0}%`;
  return (
    <div
      class="strip"
      role="progressbar"
      aria-label={label}
      aria-valuemin={0}
      aria-valuemax={max}
      aria-valuenow={value}
      aria-valuetext={valueText}
    >
      <div class="strip-done" style={{ inlineSize: part(value) }} />
      {marks.map((at) => (
        <i class="strip-mark" key={at} style={{ insetInlineStart: part(at) }} />
      ))}
    </div>
  );
}
