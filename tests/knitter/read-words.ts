/**
 * Reads a row as it stands on the screen, word by word, the way somebody reads it who has it before her and nothing
 * else: written apart from the program's own reader, and smaller, since it has to know only what is printed.
 */
export type Order =
  | { readonly do: string; readonly times: number }
  | { readonly do: string; readonly left: number }
  | { readonly again: readonly Order[]; readonly times: number }
  | { readonly again: readonly Order[]; readonly left: number };

const verbs: readonly (readonly [RegExp, string])[] = [
  [/^knit$/, 'k'],
  [/^purl$/, 'p'],
  [/^slip$/, 'sl'],
  [/^(?:bind|cast) off$/, 'bo'],
  [/^cast on$/, 'co'],
  [/^pick up and knit$/, 'pu'],
  [/^work in pattern$/, 'patt'],
];

/** '*k1, p1; repeat from * to last st, k1' and the like; throws where it cannot make out what is meant. */
export function readWords(text: string): Order[] {
  const parts = commas(text);
  const orders: Order[] = [];
  for (let i = 0; i < parts.length; i += 1) {
    const part = parts[i] ?? '';
    if (!part.startsWith('*')) {
      orders.push(readOne(part));
      continue;
    }
    // everything up to '; repeat from *' belongs to the repeat, commas and all
    let whole = part;
    while (!whole.includes('; repeat from * ')) {
      i += 1;
      if (i >= parts.length) throw new Error(`the repeat of “${text}” has no end`);
      whole += `, ${parts[i]}`;
    }
    const [inner = '', end = ''] = whole.slice(1).split('; repeat from * ');
    orders.push({ again: readWords(inner), left: goalOf(end) });
  }
  return orders;
}

/** Split at the commas that lie in no bracket. */
function commas(text: string): string[] {
  const out: string[] = [''];
  let depth = 0;
  for (const sign of text) {
    if (sign === '[' || sign === '(') depth += 1;
    if (sign === ']' || sign === ')') depth -= 1;
    if (sign === ',' && depth === 0) out.push('');
    else out[out.length - 1] += sign;
  }
  return out.map((part) => part.trim());
}

function goalOf(words: string): number {
  if (words === 'to end') return 0;
  const last = /^to last (?:(\d+) )?(?:sts?|stitch(?:es)?)$/.exec(words);
  if (!last) throw new Error(`how far is “${words}”?`);
  return Number(last[1] ?? 1);
}

function readOne(part: string): Order {
  const bracket = /^\[(.*)\] (?:(\d+) times|(to .*))$/.exec(part);
  if (bracket) {
    const again = readWords(bracket[1] ?? '');
    return bracket[2] ? { again, times: Number(bracket[2]) } : { again, left: goalOf(bracket[3] ?? '') };
  }
  const inOne = /^\((.*)\) in next st$/.exec(part);
  if (inOne) return { do: (inOne[1] ?? '').split(', ').join(' '), times: 1 };
  return counted(part) ?? openEnded(part) ?? { do: part.replace(/^(inc|dec) (\d) .*$/, '$1 $2'), times: 1 };
}

/** 'k5', 'bind off 5 sts', 'place 3 sts on holder' */
function counted(part: string): Order | undefined {
  const short = /^(k|p|sl)(\d+)$/.exec(part);
  if (short) return { do: short[1] ?? '', times: Number(short[2]) };
  const long = /^(.*?) (\d+) sts?( .*)?$/.exec(part);
  if (!long) return undefined;
  const [, verb = '', times, rest = ''] = long;
  const whole = `${verb}${rest}`;
  const plain = whole === 'to last' ? undefined : verbs.find(([words]) => words.test(whole))?.[1];
  const said =
    plain ??
    {
      'place on holder': 'hold',
      'take up from holder': 'take',
      'leave unworked': 'unworked',
      'work in pattern': 'patt',
    }[whole];
  return said ? { do: said, times: Number(times) } : undefined;
}

/** 'knit', 'purl to end', 'turn' (what is left stays unworked), 'bind off all sts in pattern', 'leave sts unworked to last 3 sts' */
function openEnded(part: string): Order | undefined {
  if (part.endsWith(' off all sts in pattern')) return { do: 'bo', left: 0 };
  if (part === 'turn') return { do: 'unworked', left: 0 };
  if (/^(wrap next st|picking up each wrap|working each ds as one st)$/.test(part))
    return { do: part, times: 1 };
  const [, words = '', goal = 'to end'] = /^(.*?)(?: (to (?:end|last .*)))?$/.exec(part) ?? [];
  const verb =
    verbs.find(([known]) => known.test(words))?.[1] ??
    { 'place sts on holder': 'hold', 'take up sts from holder': 'take', 'leave sts unworked': 'unworked' }[
      words
    ];
  return verb ? { do: verb, left: goalOf(goal) } : undefined;
}
