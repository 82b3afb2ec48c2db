import { effect } from '@preact/signals';
import { expect, it, vi } from 'vitest';

it('a word is said anew where it was waited for, and no other: what has all of its words is not drawn again', async () => {
  vi.resetModules();
  const { say, loadWords } = await import('../../src/words/say.ts');
  const said: Record<'there' | 'waited for', string[]> = { there: [], 'waited for': [] };
  const stop = [
    effect(() => void said.there.push(say('ui.close'))),
    effect(() => void said['waited for'].push(say('otherRow.rowAfter'))),
  ];
  await loadWords('otherRow');
  await loadWords('pace', 'lap');
  for (const end of stop) end();
  expect(said).toEqual({ there: ['Close'], 'waited for': ['', 'The row after'] });
});
