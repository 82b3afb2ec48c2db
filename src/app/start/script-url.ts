interface ScriptUrls {
  createScriptURL(url: string): string;
}

let policy: ScriptUrls | undefined;

/**
 * The address of a script beside the page. Where Trusted Types are enforced, only this policy makes one; it may be made
 * once only, and makes none outside the app's own folder.
 */
export function scriptUrl(path: string): string {
  const { href } = new URL(path, document.baseURI);
  if (!href.startsWith(new URL('./', document.baseURI).href)) throw new TypeError(`${href} is not ours`);
  policy ??= trustedTypesOf(globalThis)?.createPolicy('ridgeline', { createScriptURL: (url) => url });
  return policy?.createScriptURL(href) ?? href;
}

const trustedTypesOf = (page: object) =>
  (page as { trustedTypes?: { createPolicy(name: string, rules: ScriptUrls): ScriptUrls } }).trustedTypes;
