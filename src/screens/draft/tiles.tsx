import { useId } from 'preact/hooks';

interface TileOption<T extends string> {
  readonly value: T;
  readonly label: string;
  /** SVG path in a box of 48 by 40; without it a tile is a mark on a tape */
  readonly d?: string;
}

interface TilesProps<T extends string> {
  readonly label: string;
  /** what it is for stands above it already, and is only read out */
  readonly isTitled?: boolean;
  /** beside the label */
  readonly says?: string | undefined;
  readonly value: T;
  readonly options: readonly TileOption<T>[];
  readonly onChange: (value: T) => void;
}

/** A choice that is drawn, in one row; radio buttons underneath, so that keys and readers know them. */
export function Tiles<T extends string>({
  label,
  isTitled = false,
  says,
  value,
  options,
  onChange,
}: TilesProps<T>) {
  const id = useId();
  const isTape = options.every(({ d }) => d === undefined);
  return (
    <fieldset class="choice draft-choice" aria-describedby={says ? `${id}-says` : undefined}>
      <legend class={isTitled ? 'spoken' : 'choice-legend'}>{label}</legend>
      {says && (
        <span class="quiet draft-tiles-say" id={`${id}-says`}>
          {says}
        </span>
      )}
      <div class={isTape ? 'draft-tape' : 'draft-tiles'}>
        {options.map((option) => (
          <label class={isTape ? 'draft-mark' : 'draft-tile'} key={option.value}>
            <input
              class={isTape ? '' : 'spoken'}
              type="radio"
              name={id}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChange(option.value)}
            />
            {option.d && (
              <svg viewBox="0 0 48 40" aria-hidden="true">
                <path d={option.d} />
              </svg>
            )}
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
