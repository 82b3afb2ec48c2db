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

/** Screens that a visit may begin with, by their addresses: a bookmark, a shortcut, a link to the sample. */
const begins: Readonly<Record<string, string>> = {
  '': workbasket,
  draft: 'src/screens/draft/draft-screen.tsx',
  read: 'src/screens/pattern/pattern-screen.tsx',
  new: 'src/screens/editor/editor-screen.tsx',
  sample: 'src/screens/open/sample-screen.tsx',
  samples: 'src/screens/open/samples-screen.tsx',
  backup: 'src/screens/backup/backup-screen.tsx',
  settings: 'src/screens/settings/settings-screen.tsx',
};

/** What every screen but the first ones comes by. */
const forOthers = ['src/screens/other-screens.ts', 'src/words/says-fault.ts'];

/** The words of all but the first screens. */
const rest = 'src/words/en/settings.ts';

/** What a screen asks for as soon as it runs. */
const asks: Readonly<Record<string, readonly string[]>> = {
  // and what the row is set beside: named late it would come a whole way to the host later
  sample: [
    'src/app/garments/sample.ts',
    'src/knit/garment/sample.ts',
    'src/store/garment/garment-calls.ts',
    'src/screens/knitting/rest.ts',
  ],
};

function firstFiles(bundle: readonly Rolldown.OutputBundle[string][]): FirstFiles {
  const chunks = bundle.filter((file) => file.type === 'chunk');
  const chunkOf = (path: string) => {
    const found = chunks.find((chunk) => chunk.moduleIds.some((id) => isAt([path], id)));
    if (found === undefined) throw new Error(`The build has no chunk with ${path}.`);
    return found;
  };
  const inPage = filesBy([chunkOf('src/main.tsx')], chunks);
  const files: string[] = [];
  const screens: Record<string, number[]> = {};
  for (const [address, path] of Object.entries(begins)) {
    const of = [path, ...(address === '' ? [] : [...forOthers, rest]), ...(asks[address] ?? [])].map(chunkOf);
    // what words need is the same in every language; they themselves are asked for in hers
    const needed = filesBy(of, chunks).filter(
      (file) => !inPage.includes(file) && file !== chunkOf(rest).fileName,
    );
    files.push(...needed.filter((file) => !files.includes(file)));
    screens[address] = needed.map((file) => files.indexOf(file));
  }
  const words = (language: string): [string, string] => [
    chunkOf(`src/words/${language}/workbasket.ts`).fileName,
    chunkOf(`src/words/${language}/settings.ts`).fileName,
  ];
  return {
    files,
    screens,
    words: Object.fromEntries(languages.map((language) => [language, words(language)])),
    font: 'fonts/atkinson-hyperlegible-next.woff2',
  };
}

/** The files of chunks, and of all that they need before they can run; scripts first. */
function filesBy(
  wanted: readonly Rolldown.OutputChunk[],
  chunks: readonly Rolldown.OutputChunk[],
): readonly string[] {
  const all = new Set<Rolldown.OutputChunk>();
  const take = (chunk: Rolldown.OutputChunk | undefined): void => {
    if (chunk === undefined || all.has(chunk)) return;
    all.add(chunk);
    for (const name of chunk.imports) take(chunks.find(({ fileName }) => fileName === name));
  };
  for (const chunk of wanted) take(chunk);
  const styles = [...all].flatMap(({ viteMetadata }) => [...(viteMetadata?.importedCss ?? [])]);
  return [...[...all].map(({ fileName }) => fileName), ...new Set(styles)];
}

export const head: readonly Plugin[] = [openPolicyInDevelopment, oneFirstScript, keptCompiled, startInHead];
