import { describe, expect, it } from 'vitest';
import { chunkGroups, chunks, missingPaths } from '../../src/build/chunks.ts';

describe('the list of what is fetched as one file', () => {
  it('names nothing that is not there; what is not there stops the build', () => {
    expect(missingPaths(chunks)).toEqual([]);
    const moved = [
      { name: 'a', of: ['src/knit/', 'src/knit/moved/'] },
      { name: 'b', neededBy: ['src/main.ts'], but: ['src/gone/'] },
    ];
    expect(missingPaths(moved)).toEqual(['src/knit/moved/', 'src/main.ts', 'src/gone/']);
    expect(() => chunkGroups(moved)).toThrow('src/knit/moved/');
  });

  it('takes a file by the first line that fits: what a screen needs, a folder, but not these', () => {
    const importers: Record<string, readonly string[]> = {
      '/p/src/knit/fault.ts': ['/p/src/knit/row/work.ts'],
      '/p/src/knit/row/work.ts': ['/p/src/knit/fault.ts', '/p/src/main.tsx'],
    };
    const byBoth = { '/p/src/knit/step.ts': ['/p/src/main.tsx', '/p/src/app/off-thread/worker.ts'] };
    Object.assign(importers, byBoth, { '/p/src/knit/read.ts': ['/p/src/app/off-thread/worker.ts'] });
    const graph = { getModuleInfo: (id: string) => ({ importers: importers[id] ?? [] }) };
    const groupOf = (id: string) => chunkGroups().find(({ name }) => name(id, graph))?.debugName;
    expect(groupOf('/p/src/knit/fault.ts')).toBe('row-in-hand');
    expect(groupOf('/p/src/knit/step.ts')).toBe('core');
    expect(groupOf('/p/src/knit/read.ts')).toBe('beside');
    expect(groupOf('/p/src/knit/gauge.ts')).toBe('plan');
    expect(groupOf('/p/src/words/en/yarn.ts')).toBe('words-en');
    expect(groupOf('/p/src/words/en/workbasket.ts')).toBe('first-words-en');
    expect(groupOf('/p/src/words/fr/first.ts')).toBe('first-words-fr');
    expect(groupOf('/p/src/words/fr/rest.ts')).toBe('words-fr');
    expect(groupOf('/p/src/words/de/workbasket.ts')).toBe('first-words-de');
    expect(groupOf('/p/src/words/de/yarn.ts')).toBe('words-de');
    expect(groupOf('/p/src/words/needle.ts')).toBe('parts');
    expect(groupOf('/p/src/store/door.ts')).toBe('parts');
    expect(groupOf('/p/src/screens/yarn/yarn-screen.tsx')).toBe('garment');
    expect(groupOf('/p/src/screens/print/print-screen.tsx')).toBe('wanted-print');
    expect(groupOf('/p/src/screens/editor/editor-screen.tsx')).toBe('editor');
  });
});
