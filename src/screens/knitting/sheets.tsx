import { reading } from '../../app/in-hand/reading.ts';
import { inHand } from '../../app/state.ts';
import { LegendSheet } from './legend-sheet.tsx';
import { RowsSheet } from './rows-sheet.tsx';
import { saysReading } from './says-place.ts';
import { ToolsSheet } from './tools-sheet.tsx';

export type SheetName = 'rows' | 'tools' | 'legend';

export interface SheetsProps {
  readonly open: SheetName | undefined;
  /** the part's, for when it is done */
  readonly title: string;
  readonly onClose: () => void;
}

/** What comes up over the knitting screen. While none is open a new row does not draw them anew. */
export function Sheets({ open, title, onClose }: SheetsProps) {
  const isOpen = open !== undefined;
  const now = isOpen ? inHand.value : inHand.peek();
  const read = isOpen ? reading.value : reading.peek();
  if (!now) return null;
  const sentence = open === 'tools' ? saysReading(read, title) : '';
  return (
    <>
      <RowsSheet now={now} open={open === 'rows'} onClose={onClose} />
      {read && <LegendSheet {...read} open={open === 'legend'} onClose={onClose} />}
      <ToolsSheet open={open === 'tools'} sentence={sentence} onClose={onClose} />
    </>
  );
}
