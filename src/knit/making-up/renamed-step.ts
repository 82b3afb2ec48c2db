/** Steps that are ticked by the name of their piece, with the makes that they are for behind it: 'block Sleeve 2'. */
const BY_NAME = ['block ', 'pick up '] as const;

/** The id of a step of the making up after pieces were renamed. @param called their new names, by the old ones */
export function renamedStep(id: string, called: ReadonlyMap<string, string>): string {
  const kind = BY_NAME.find((prefix) => id.startsWith(prefix));
  if (kind === undefined) return id;
  const named = id.slice(kind.length);
  const exact = called.get(named);
  if (exact !== undefined) return `${kind}${exact}`;
  const [marked, name = '', makes = ''] = /^(.*?)((?: \d+)+)$/s.exec(named) ?? [];
  const now = marked === undefined ? undefined : called.get(name);
  return now === undefined ? id : `${kind}${now}${makes}`;
}
