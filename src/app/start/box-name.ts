/**
 * The name of the box (database, small keep, messages between windows) of the copy of the app in this folder. Several
 * copies may stand under one host, which gives them all the same storage. The first one to ask has the name that was
 * the only one until now, with whatever is under it; every other copy has its folder in the name. Nothing is moved, so
 * nothing can be lost half-way. Stands in the page's head as text (src/build/head.ts), so it can use nothing from outside
 * itself.
 * @param keep gives the browser's small keep, or throws where there is none: one copy is all there can be then
 * @param folder path of the folder with the app, from '/' to '/'
 */
export function boxName(keep: () => Pick<Storage, 'getItem' | 'setItem'>, folder: string): string {
  const first = 'ridgeline';
  const claim = `${first}.at`;
  try {
    const kept = keep();
    if (kept.getItem(claim) === null) kept.setItem(claim, folder);
    return (kept.getItem(claim) ?? folder) === folder ? first : `${first} ${folder}`;
  } catch {
    return first;
  }
}
