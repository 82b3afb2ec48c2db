import { useState } from 'preact/hooks';
import { readNumber } from '../../ui/field/read-number.ts';
import { gaugeSpanMm } from '../../words/measures.ts';
import { shortened, TypedNumber, type TypedNumberProps } from './typed-number.tsx';

/** A count of a tension: kept over 100 mm, typed and shown over what she measures, 10 cm or 4 inches. */
export function GaugeCount({
  typed,
  onTyped,
  ...words
}: Omit<TypedNumberProps, 'decimals' | 'list' | 'unit'>) {
  const span = gaugeSpanMm();
  // What she types stays as she types it, '20.' on its way to '20.5'; only a figure set from elsewhere replaces it.
  const [own, setOwn] = useState({ span, kept: typed, shown: overSpan(typed, span) });
  const isOwn = own.span === span && own.kept === typed;
  const take = (shown: string) => {
    const kept = overHundred(shown, span);
    setOwn({ span, kept, shown });
    onTyped(kept);
  };
  return <TypedNumber {...words} decimals typed={isOwn ? own.shown : overSpan(typed, span)} onTyped={take} />;
}

/** Digits that are kept of a count over 4 inches: it comes back as it was typed, and a plan hangs on none behind them. */
const DIGITS = 12;

/** What she typed over so many mm, as it is kept; what is no number stays as it is, and is told so. */
export function overHundred(shown: string, spanMm: number): string {
  const count = spanMm === 100 ? undefined : readNumber(shown);
  return count === undefined ? shown : String(Number(((count * 100) / spanMm).toFixed(DIGITS)));
}

/** What is kept over 100 mm, as it stands in her field. */
export function overSpan(kept: string, spanMm: number): string {
  const count = spanMm === 100 ? undefined : readNumber(kept);
  return count === undefined ? shortened(kept) : String(Math.round(count * spanMm) / 100);
}
