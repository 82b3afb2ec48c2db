import type { PlannedRow, ShapingMark } from '../../knit/piece/planned.ts';
import { Icon, type IconName } from './icon.tsx';

/** Each way of shaping has an icon of its own. */
export function shapingIcon({ kind, by }: Pick<ShapingMark, 'kind' | 'by'>): IconName {
  if (kind === 'bind off') return 'bindOff';
  if (kind === 'cast on') return 'castOn';
  if (kind === 'turn') return 'turn';
  return by < 0 ? 'decrease' : 'increase';
}

/** What a row shapes, beside its words: each way once. */
export const ShapingIcons = ({ row }: { readonly row: Pick<PlannedRow, 'shaping'> }) => (
  <>
    {[...new Set(row.shaping.map(shapingIcon))].map((name) => (
      <Icon key={name} name={name} size="s" />
    ))}
  </>
);
