import { useEffect } from 'preact/hooks';
import { loadWords } from '../../words/say.ts';
import { later } from '../later.tsx';

/** What is said by the way; it comes after the garments. */
export const QuietLine = later(
  async () => (await Promise.all([import('../quiet-line.tsx'), loadWords('quiet')]))[0].QuietLine,
);

export function useQuietLine(): void {
  useEffect(() => void QuietLine.fetch(), []);
}
