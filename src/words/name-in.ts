import type { Words } from './message.ts';

/** Names of the draft (a piece, an edge, a section) in the language of its catalogue; a knitter's own stay as they are. */
export const nameIn =
  (draft: Words) =>
  (name: string): string => {
    const said = draft[name];
    return typeof said === 'string' ? said : name;
  };
