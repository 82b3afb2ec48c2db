type ScriptUrls = { createScriptURL(url: string): string };

/** The worker beside the page. Where Trusted Types are enforced, only this policy makes a script's address. */
export function workerUrl(): string {
  const url = new URL('sw.js', document.baseURI).href;
  const { trustedTypes } = window as {
    trustedTypes?: { createPolicy(name: string, rules: ScriptUrls): ScriptUrls };
  };
  const policy = trustedTypes?.createPolicy('ridgeline', { createScriptURL: () => url });
  return policy?.createScriptURL(url) ?? url;
}
