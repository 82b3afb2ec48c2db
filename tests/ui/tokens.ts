import { sheets } from './sheets.ts';

export type Theme = 'light' | 'dark' | 'dimmed';

export const themes: readonly Theme[] = ['light', 'dark', 'dimmed'];

const css = sheets.find(({ path }) => path.endsWith('tokens.css'))?.text ?? '';

const block = (selector: string): string => {
  const start = css.indexOf(`${selector} {`);
  if (start < 0) throw new Error(`tokens.css has no ${selector}`);
  return css.slice(start, css.indexOf('}', start));
};

const declarations = (text: string): Map<string, string> =>
  new Map([...text.matchAll(/--([\w-]+):\s*([^;]+);/g)].map((m) => [m[1] ?? '', m[2] ?? '']));

/** A token's colour in a theme, as tokens.css has it. */
export function colour(theme: Theme, name: string): string {
  const dimmed = theme === 'dimmed' ? declarations(block(":root[data-dim='true']")).get(name) : undefined;
  const value = dimmed ?? declarations(block(':root')).get(name);
  if (value === undefined) throw new Error(`tokens.css has no --${name}`);
  const pair = /^light-dark\((#\w{6}), (#\w{6})\)$/.exec(value);
  return (pair ? pair[theme === 'light' ? 1 : 2] : value) ?? value;
}

/** Relative luminance and contrast as WCAG 2.2 defines them (W3C, 2023, 'relative luminance', 'contrast ratio'). */
export function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

function luminance(hex: string): number {
  if (!/^#[0-9a-f]{6}$/.test(hex)) throw new Error(`not a colour of six digits: ${hex}`);
  const [r, g, b] = [1, 3, 5].map((i) => {
    const c = Number.parseInt(hex.slice(i, i + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}
