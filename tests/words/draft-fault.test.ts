import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { words as german } from '../../src/words/de/draft.ts';
import { saysDraftFault } from '../../src/words/draft-fault.ts';
import { words as english } from '../../src/words/en/draft.ts';
import { loadWords, speak } from '../../src/words/say.ts';

/** Codes as they stand in the sources: the first argument of a fault there. */
const codes = readdirSync('src/knit/garment').flatMap((file) => {
  const text = readFileSync(`src/knit/garment/${file}`, 'utf8');
  return [...text.matchAll(/\b(?:fault|no)\(\s*'([^']+)'/g)].map((m) => m[1] ?? '');
});

beforeAll(() => loadWords('draft', 'craft'));

describe('faults and cautions of a draft', () => {
  it('each has its sentence in English and in German', () => {
    expect(new Set(codes).size).toBeGreaterThan(25);
    for (const code of codes) {
      expect(Object.keys(english), code).toContain(code);
      expect(Object.keys(german), code).toContain(code);
    }
  });

  it('lengths are said in her unit, counts as counts', async () => {
    const head = { code: 'head does not pass', figures: { neck: 254, opens: 300, head: 560 }, sentence: '' };
    await speak({ language: 'en', units: 'cm' });
    expect(saysDraftFault(head)).toContain('The neck edge is 25.4 cm');
    await speak({ units: 'in' });
    expect(saysDraftFault(head)).toContain('The neck edge is 10 in');
    const rib = {
      code: 'rib multiple',
      figures: { count: 113, fabric: 'rib 2x2', below: 112, above: 114 },
      sentence: '',
    };
    expect(saysDraftFault(rib)).toBe('113 stitches do not fit rib, 2 by 2; 112 or 114 would.');
  });
});
