/**
 * Has the browser put its log away and begin a new one. Chromium writes on in the log of the last time; where it was killed
 * in the middle of a write, the torn entry is passed over at the next opening, written on behind, and found at the opening
 * after that: then the whole database is thrown away without a word (LevelDB, its issue 1287, which is open). When a
 * database is deleted all that is in the log is written elsewhere: so a small one is made and deleted, once in a start and
 * soon. Other browsers keep each database for itself: there it comes and goes and changes nothing.
 */
export async function beginFreshLog(factory: IDBFactory | undefined, box: string): Promise<void> {
  const name = `${box}.fresh-log`;
  try {
    if (factory === undefined) return;
    const made = factory.open(name, 1);
    // an empty one leaves nothing in the log: not every browser would see that there was one
    made.onupgradeneeded = () => made.result.createObjectStore('none');
    (await answered(made)).close();
    await answered(factory.deleteDatabase(name));
  } catch {
    // refused or full: what the box itself meets with is said where it does
  }
}

const answered = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
