import { hrefTo } from '../../app/routes.ts';
import { parseMakeKey } from '../../progress/log.ts';
import type { IconName } from '../../ui/icon/icon.tsx';

/** The pages about count and place, with the icon of each, in the order in which they are needed. */
export const tools = {
  check: 'count',
  find: 'find',
  rip: 'rip',
  rework: 'replan',
  notes: 'note',
  pace: 'pace',
  together: 'pair',
} as const satisfies Record<string, IconName>;

export type Tool = keyof typeof tools;

export const toolNames = Object.keys(tools) as readonly Tool[];

export const toolTitles = {
  check: 'count.check',
  find: 'count.find',
  rip: 'count.rip',
  rework: 'count.rework',
  notes: 'count.notes',
  pace: 'count.pace',
  together: 'count.together',
} as const satisfies Record<Tool, string>;

export const isTool = (text: string): text is Tool => Object.hasOwn(tools, text);

/** The address of such a page for a make; `query` as '?to=12'. */
export function hrefToTool(key: string, tool: Tool | 'tools', query = ''): string {
  const id = parseMakeKey(key);
  return id === undefined ? hrefTo('workbasket') : `${hrefTo('count', { ...id, tool })}${query}`;
}
