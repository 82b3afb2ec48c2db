/** The browser's caches in memory, as far as the worker asks of them. */
export function cachesInMemory() {
  const all = new Map<string, Map<string, string>>();
  const urlOf = (of: Request | string) => (typeof of === 'string' ? of : of.url);
  const open = async (name: string) => {
    const held = all.get(name) ?? new Map<string, string>();
    all.set(name, held);
    return {
      match: async (of: Request | string) => {
        const text = held.get(urlOf(of));
        return text === undefined ? undefined : new Response(text);
      },
      put: async (of: Request | string, response: Response) =>
        void held.set(urlOf(of), await response.text()),
      delete: async (of: Request | string) => held.delete(urlOf(of)),
      keys: async () => [...held.keys()].map((url) => new Request(url)),
    };
  };
  const caches = {
    open,
    has: async (name: string) => all.has(name),
    delete: async (name: string) => all.delete(name),
  };
  return { all, caches: caches as unknown as CacheStorage };
}
