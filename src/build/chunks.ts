import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { languages } from '../words/languages.ts';
import { offThread } from './beside.ts';

/** Files that are fetched as one. The first line that fits takes a file. */
export interface Chunk {
  readonly name: string;
  /** all that these need before they can run; what they fetch later, on demand, is not */
  readonly neededBy?: readonly string[];
  /** and these need as well */
  readonly andBy?: readonly string[];
  /** these files, and all below these folders */
  readonly of?: readonly string[];
  /** what the build itself makes (src/build/words.ts) */
  readonly made?: readonly string[];
  /** but not these */
  readonly but?: readonly string[];
  /** only what more than one of the files fetched by themselves needs */
  readonly shared?: true;
}

/** The row in hand, and the screen of a first visit: also named in the page's head (src/build/head.ts). */
export const workbasket = 'src/screens/workbasket/workbasket-screen.tsx';

const rowInHand = ['src/main.tsx', 'src/screens/knitting/knitting-screen.tsx'];

/** Beside the folders of the screens: what several of them have in common. */
const forAnyScreen = readdirSync('src/screens', { withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map(({ name }) => `src/screens/${name}`);

/** The first file of a language and the catalogues that it names; in English most of them are in the first script. */
const firstWordsOf = (language: string): readonly string[] => {
  const folder = `src/words/${language}/`;
  const named = readFileSync(`${folder}first.ts`, 'utf8').matchAll(/'\.\/([\w-]+\.ts)'/g);
  return ['first.ts', ...[...named].map(([, file = '']) => file)].map((file) => folder + file);
};

const fromFile = 'src/app/drafts/pattern/from-file/';

/** Begins the name of a file that is no part of what is kept from the first visit on: it is fetched when it is wanted. */
export const WHEN_WANTED = 'wanted-';

/** What such a file is wanted for, by its name: 'pdf', 'docx'; undefined for any other file. */
export const kindWanted = (file: string): string | undefined => /\/wanted-(\w+)/.exec(file)?.[1];
/** How all looks that no line before has taken. */
const lookedAtLater = ['src/screens', 'src/ui'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.css'))
    .map((path) => `${folder}/${path}`),
);

/** What goes from screen to camera; nothing asks for it to be kept. */
const byCamera = [
  'src/screens/backup/by-camera.tsx',
  'src/screens/pass-on/code-run.tsx',
  'src/app/backup/look-for-codes.ts',
  'src/app/backup/codes-of-garment.ts',
  'src/app/device/camera.ts',
  'src/store/share/code-run.ts',
  'src/store/share/base45.ts',
];

/** What says and what reads how a garment is made up, by the same sentences: wanted when one is made of a text, or passed on as one. */
const sewing = [
  'as-told',
  'joined-as-told',
  'read-making-up',
  'read-stripes',
  'making-up-sentences',
  'making-up-table',
  'plain-seams',
  'template',
  'told-by',
].map((name) => `src/knit/written/${name}.ts`);

/** A link, or a garment with its place, as codes that a camera reads: for those who pass one on. */
const drawingCodes = ['node_modules/uqr/', 'src/screens/pass-on/qr-code.tsx'];

/** A garment, or a design in all sizes, as a written pattern with pictures, looked through: for those who publish. */
const publishing = [
  ...[
    'row-notes.tsx',
    'in-sizes.tsx',
    'outcome.tsx',
    'adjust.tsx',
    'glued.ts',
    'pictures.tsx',
    'measures-of.ts',
    'schematic-lines.ts',
    'signs-apart.ts',
    'written-card.tsx',
    'written-in.tsx',
    'written-text.tsx',
  ].map((name) => `src/screens/pass-on/${name}`),
  'src/words/written.ts',
  'src/words/counted-words.ts',
  'src/app/garments/coloured-makes.ts',
  // but what works a size out, which a link asks for as well
  ...readdirSync('src/knit/written')
    .map((name) => `src/knit/written/${name}`)
    .filter((name) => name !== 'src/knit/written/work-size.ts' && !sewing.includes(name)),
];

const filesOf = (folder: string, ...names: readonly string[]): readonly string[] =>
  names.map((name) => `src/${folder}/${name}.ts`);

/** Of the craft, what is only said of a garment: it brings nothing along that plans. */
const said = filesOf('knit', 'piece/ridges', 'garment/bodies');

/** A backup, a whole garment as it is stored or passed on, and what comes with a row: the page's worker needs most of it too. */
const keeping = [
  ...filesOf('app/backup', 'backup-file', 'backup', 'one-garment', 'unite-kept'),
  ...filesOf('store/backup', 'contents', 'export', 'import', 'merge', 'named-by-content', 'preview'),
  ...filesOf('store/backup', 'undone', 'way-back', 'write-deed'),
  ...filesOf('store', 'garment/garment-calls', 'garment/places', 'garment/write-garment', 'box/set-setting'),
  'src/store/uniting/',
  ...filesOf('store/share', 'link-parts'),
  ...filesOf(
    'app',
    'device/quiet-line',
    'device/tell',
    'in-hand/before-row',
    'in-hand/sew-first',
    'garments/passing-on',
    'garments/stripes-to-pass',
  ),
  'src/knit/piece/before-row.ts',
  ...['quiet-line.tsx', 'knitting/before-row.tsx', 'count/read-notes.ts', 'count/stripes-drawn.tsx'].map(
    (name) => `src/screens/${name}`,
  ),
];

/** What drafts and plans, in several screens. */
const planning = [
  'src/app/drafts/design/',
  ...filesOf('app/garments', 'in-sizes', 'mending', 'as-made', 'stripes-laid'),
  'src/screens/size-table.tsx',
  'src/screens/mends/',
];

/** Rows in colours: told with a row, and reckoned with by what plans. */
const ofColours = filesOf('knit', 'yarn/stripes', 'yarn/loops');

/** What a text that is read and its worker have in common: a few lines, for which the screen waits for none of the reader. */
const ofText = ['src/knit/pattern/text/with-lines.ts'];

/** The search for what mends a garment after a change: it tries whole pieces, and is asked for seldom. */
const mending = ['mends', 'ways', 'shoulder-ways', 'break-groups'].map(
  (name) => `src/knit/making-up/${name}.ts`,
);

/** Paths below the project's folder. One that is not there stops the build: what it held would go elsewhere unseen. */
export const chunks: readonly Chunk[] = [
  // what the worker takes from the first script, which it must not run
  { name: 'core', neededBy: rowInHand, andBy: [offThread] },
  // where an app on the home screen opens, and where a first visit does: one file each, not twenty
  { name: 'row-in-hand', neededBy: rowInHand },
  { name: 'fabrics', neededBy: [workbasket], andBy: [offThread] },
  { name: 'workbasket', neededBy: [workbasket] },
  // looks of all other screens: in one file what they say alike takes no more room
  { name: 'looks', of: lookedAtLater },
  { name: 'lines', of: ofText, shared: true },
  // what other screens and the worker share: it may touch nothing of a page
  { name: 'beside', neededBy: [offThread], of: ofColours, shared: true },
  // the names of messages, which are the same in every language
  { name: 'names', made: ['src/words/names-of/'] },
  // a language comes whole, but for what the first screens say, for which nobody waits for all the rest, and for what a
  // pattern for others says in it: few pass one on
  ...languages.flatMap((language): Chunk[] => {
    const folder = `src/words/${language}/`;
    const passed = existsSync(`${folder}written/`) ? [`${folder}written/`] : [];
    return [
      { name: `first-words-${language}`, of: firstWordsOf(language) },
      { name: `words-${language}`, of: [folder], but: passed },
      { name: `${WHEN_WANTED}publishing-${language}`, of: passed },
    ];
  }),
  // what every other screen comes by, and the frame of the page for whose rest most is fetched: painted before that comes
  {
    name: 'other-screens',
    of: [
      'src/screens/other-screens.ts',
      'src/words/says-fault.ts',
      ...['draft/draft-screen.tsx', 'draft/fold.tsx', 'not-fetched.tsx'].map((name) => `src/screens/${name}`),
      'src/ui/group/group.tsx',
    ],
  },
  // what several screens share is fetched once, with the first of them, instead of in crumbs
  {
    name: 'parts',
    of: [
      'src/ui/',
      'src/app/',
      'src/pace/',
      'src/words/',
      'src/progress/',
      'src/store/',
      // passing on names pieces as the draft does, and needs no more of it
      'src/screens/draft/says-name.ts',
      // the editor names a tool as the row in hand does, which must not bring all of the editor along
      'src/screens/count/tools.ts',
      'src/screens/count/tools-menu.tsx',
      'src/screens/knitting/ways-notice.tsx',
      ...said,
      ...forAnyScreen,
    ],
    but: [...byCamera, ...publishing, ...keeping, ...planning],
    shared: true,
  },
  { name: 'keeping', of: keeping },
  { name: 'plan', of: ['src/knit/', ...planning], but: [...publishing, ...sewing], shared: true },
  // screens that lead to one another come together: what they say alike takes no more room
  {
    name: 'garment',
    of: ['garment', 'making-up', 'yarn', 'record'].map((name) => `src/screens/${name}/`),
  },
  // each of these a visit may begin with, and wants nothing of the others; the last ones are small
  { name: 'draft', of: ['src/screens/draft/', ...filesOf('knit', 'garment/demo')] },
  { name: 'editor', of: ['src/screens/editor/'] },
  {
    name: 'small-screens',
    of: [
      ...['pattern', 'settings', 'open'].map((name) => `src/screens/${name}/`),
      ...filesOf('knit', 'pattern/text/other-tongue', 'garment/sample'),
      ...filesOf('app', 'garments/sample'),
    ],
  },
  {
    name: 'handing-on',
    of: ['pass-on', 'backup'].map((name) => `src/screens/${name}/`),
    but: [...byCamera, ...publishing, ...drawingCodes],
  },
  // wanted by few, one of them larger than the app: fetched with the first file of the kind
  {
    name: `${WHEN_WANTED}pdf`,
    of: [
      'node_modules/pdfjs-dist/legacy/build/',
      ...['pdf', 'text-of-pages', 'columns', 'page'].map((name) => `${fromFile}${name}.ts`),
    ],
  },
  { name: `${WHEN_WANTED}sewing`, of: sewing },
  { name: `${WHEN_WANTED}publishing`, of: publishing },
  { name: `${WHEN_WANTED}publishing-codes`, of: drawingCodes },
  {
    name: `${WHEN_WANTED}print`,
    of: ['src/screens/print/', 'src/ui/print/print-sheet.tsx', 'src/ui/print/lines-of.ts'],
  },
  { name: `${WHEN_WANTED}mends`, of: mending },
  { name: `${WHEN_WANTED}docx`, of: ['node_modules/fflate/', `${fromFile}docx.ts`] },
  { name: `${WHEN_WANTED}camera`, of: byCamera },
  // what is asked for at about the same time, or seldom: no crumbs
  {
    name: 'beside-box',
    of: ['beside/beside', 'box/frame-factory', 'place/rows-together'].map((name) => `src/store/${name}.ts`),
  },
  { name: 'later', of: ['src/app/start/later.ts', 'src/app/device/all.ts'] },
];

/** Paths in the list that are not there. */
export const missingPaths = (list: readonly Chunk[]): readonly string[] =>
  list
    .flatMap(({ neededBy = [], andBy = [], of = [], but = [] }) => [...neededBy, ...andBy, ...of, ...but])
    .filter((path) => !existsSync(path));

interface ModuleGraph {
  getModuleInfo(id: string): { readonly importers: readonly string[] } | null;
}

/** The list as the bundler takes it. Throws a sentence where it names what is not there. */
export function chunkGroups(list: readonly Chunk[] = chunks) {
  const [lost] = missingPaths(list);
  if (lost !== undefined) throw new Error(`src/build/chunks.ts names ${lost}, which is not there.`);
  return list.map(({ name, neededBy, andBy, of = [], made = [], but = [], shared }) => ({
    name: (id: string, graph: ModuleGraph) => {
      const needed = (by: readonly string[]) => isNeeded(by, id, graph);
      const isNamed = isAt([...of, ...made], id) && !isAt(but, id);
      const fits = isNamed || (neededBy && needed(neededBy) && (andBy === undefined || needed(andBy)));
      return fits ? name : null;
    },
    debugName: name,
    ...(shared && { minShareCount: 2 }),
  }));
}

/** Whether a module is one of these files, or lies in one of these folders. */
export const isAt = (paths: readonly string[], id: string): boolean =>
  paths.some((path) => (path.endsWith('/') ? id.includes(`/${path}`) : id.endsWith(`/${path}`)));

function isNeeded(by: readonly string[], id: string, graph: ModuleGraph, seen = new Set<string>()): boolean {
  if (isAt(by, id)) return true;
  seen.add(id);
  const importers = graph.getModuleInfo(id)?.importers ?? [];
  return importers.some((importer) => !seen.has(importer) && isNeeded(by, importer, graph, seen));
}
