type ScriptUrls = { createScriptURL(url: string): string };

let made: string | undefined;

/**
 * The worker beside the page. Where Trusted Types are enforced, only this policy makes a script's
 * address; it may be made once only.
 */
export function workerUrl(): string {
  made ??= makeWorkerUrl(new URL('sw.js', document.baseURI).href);
  return made;
}

function makeWorkerUrl(url: string): string {
  const { trustedTypes } = window as {
    trustedTypes?: { createPolicy(name: string, rules: ScriptUrls): ScriptUrls };
  };
  const policy = trustedTypes?.createPolicy('ridgeline', { createScriptURL: () => url });
  return policy?.createScriptURL(url) ?? url;
}
