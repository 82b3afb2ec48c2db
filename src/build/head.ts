import { createHash } from 'node:crypto';
import type { Plugin, Rolldown } from 'vite';
import { boxName } from '../app/start/box-name.ts';
import { whenNotStarted } from '../app/start/not-started.ts';
import { askEarly, type FirstFiles } from '../pace/ask-early.ts';
import { languages } from '../words/languages.ts';
import { isAt, workbasket } from './chunks.ts';

/** What the build puts into the page's head, so that nothing of a start waits for a file that names another. */

/** The page is built without eval and inline code; the development server needs both. */
const openPolicyInDevelopment: Plugin = {
  name: 'open-policy-in-development',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

/**
 * What the first script takes from a file of its own (it is the worker's as well) is fetched beside it, and run when it
 * asks for it: one script begins the page.
 */
const oneFirstScript: Plugin = {
  name: 'one-first-script',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler: (html) =>
      html.replace(
        /<script type="module"([^>]*) src="([^"]*\/core-[^"]+)"><\/script>/,
        '<link rel="modulepreload"$1 href="$2">',
      ),
  },
};

/**
 * A browser may keep a script compiled, and take that at the next start instead of compiling it anew. Chromium does so
 * for a module only where it was asked for as any script before; otherwise it compiles it while it comes, at every
 * start. So the first script is named twice. And nearly all of its functions run before the first row stands: a line
 * at its top has the browser compile them together, not one by one as they are called
 * (tests/browser/kept-compiled.test.ts).
 */
const keptCompiled: Plugin = {
  name: 'kept-compiled',
  apply: 'build',
  generateBundle: {
    order: 'post',
    handler(_options, bundle) {
      for (const file of Object.values(bundle))
        if (file.type === 'chunk' && file.name === 'row-in-hand')
          file.code = `//# allFunctionsCalledOnLoad\n${file.code}`;
    },
  },
  transformIndexHtml: {
    order: 'post',
    handler(html) {
      const [, script] = /<script type="module"[^>]* src="([^"]+)"/.exec(html) ?? [];
      if (script === undefined) throw new Error('The page has no first script.');
      const asked = `<link rel="preload" as="script" crossorigin href="${script}">`;
      return html.replace('</title>', () => `</title>\n    ${asked}`);
    },
  },
};

/** A small script in the page itself, allowed by its hash alone: it asks for what the first screen will need, and helps where none comes. */
const startInHead: Plugin = {
  name: 'start-in-head',
  apply: 'build',
  transformIndexHtml: {
    order: 'post',
    handler(html, { bundle = {} }) {
      const files = JSON.stringify(firstFiles(Object.values(bundle)));
      const box = `(${boxName.toString()})(()=>localStorage,new URL('./',location.href).pathname)`;
      const script = `document.documentElement.dataset.box=${box};(${whenNotStarted.toString()})();(${askEarly.toString()})(${files})`;
      const hash = createHash('sha256').update(script).digest('base64');
      return (
        html
          .replace("script-src 'self'", `script-src 'self' 'sha256-${hash}'`)
          // no frame without anything in it is painted before the app is there: that frame holds up the app
          .replace('<script type="module"', '<script type="module" blocking="render"')
          .replace('</title>', () => `</title>\n    <script>${script}</script>`)
      );
    },
  },
};

function firstFiles(bundle: readonly Rolldown.OutputBundle[string][]): FirstFiles {
  const files = bundle.filter((file) => file.type === 'chunk');
  const chunkOf = (path: string) => {
    const found = files.find((chunk) => chunk.moduleIds.some((id) => isAt([path], id)));
    if (found === undefined) throw new Error(`The build has no chunk with ${path}.`);
    return found;
  };
  const screen = chunkOf(workbasket);
  const words = (language: string) => chunkOf(`src/words/${language}/workbasket.ts`).fileName;
  return {
    scripts: [screen.fileName, ...screen.imports].filter((file) => !file.includes('row-in-hand')),
    styles: [...(screen.viteMetadata?.importedCss ?? [])],
    words: {
      ...Object.fromEntries(languages.map((language) => [language, words(language)])),
      en: words('en'),
    },
    font: 'fonts/atkinson-hyperlegible-next.woff2',
  };
}

export const head: readonly Plugin[] = [openPolicyInDevelopment, oneFirstScript, keptCompiled, startInHead];
