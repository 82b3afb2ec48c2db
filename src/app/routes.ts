import { type GarmentId, type MakeKey, makeKey, type PieceId } from '../progress/log.ts';

/**
 * Every address of the app, by screen. Addresses live in the hash so that the app runs in any sub-folder.
 * To add a screen: a line here, and its folder's line in `src/screens/other-screens.ts`.
 */
export const patterns = {
  workbasket: '/',
  /** the row in hand, wherever it is */
  continue: '/continue',
  /** makes the sample where it is missing and opens its back */
  sample: '/sample',
  sampleOf: '/sample/:which',
  samples: '/samples',
  garment: '/g/:garment',
  /** `?row=n` shows that row without moving the place */
  knitting: '/k/:garment/:piece/:part/:make',
  /** count and place of a make; `tool` names the page, 'tools' lists them */
  count: '/k/:garment/:piece/:part/:make/:tool',
  yarn: '/g/:garment/yarn',
  makingUp: '/g/:garment/making-up',
  passOn: '/g/:garment/pass-on',
  record: '/g/:garment/record',
  /** a garment that came in a link; the text is read on this device, never sent */
  openLink: '/open/:text',
  /** the plan on paper; `?piece=id` one piece */
  print: '/g/:garment/print',
  backup: '/backup',
  settings: '/settings',
  /** a garment by its numbers; `?piece=id` shows that piece */
  newGarment: '/new',
  editGarment: '/edit/:garment',
  /** a garment from measures and a swatch */
  draft: '/draft',
  /** a garment from a pattern's text */
  read: '/read',
} as const satisfies Record<string, string>;

export type ScreenName = keyof typeof patterns;

/** By the names in the patterns; the door by which ids come out of an address. */
type At = Readonly<Record<string, string>> & { readonly garment?: GarmentId; readonly piece?: PieceId };

export interface Route {
  readonly screen: ScreenName;
  /** the parts of the address that the pattern names with ':' */
  readonly at: At;
  readonly query: URLSearchParams;
}

/** Reads a hash such as '#/k/a/b/0/1?row=12'; undefined when no screen has that address. */
export function parseRoute(hash: string): Route | undefined {
  const [path = '', query = ''] = hash.replace(/^#/, '').split('?', 2);
  for (const [screen, pattern] of Object.entries(patterns)) {
    const at = match(pattern, path === '' ? '/' : path);
    if (at !== undefined) return { screen: screen as ScreenName, at, query: new URLSearchParams(query) };
  }
  return undefined;
}

/** The make that an address of the knitting screen or its tools is of, as the store's key. */
export const makeAt = ({ at }: Route): MakeKey =>
  makeKey({ garment: at.garment ?? '', piece: at.piece ?? '', part: Number(at.part), make: Number(at.make) });

/** The address of a screen, ready for `href`. */
export function hrefTo(screen: ScreenName, at: Readonly<Record<string, string | number>> = {}): string {
  return `#${patterns[screen].replace(/:(\w+)/g, (_, name: string) => encodeURIComponent(String(at[name] ?? '')))}`;
}

function match(pattern: string, path: string): Record<string, string> | undefined {
  const wanted = segments(pattern);
  const given = segments(path);
  if (wanted.length !== given.length) return undefined;
  const at: Record<string, string> = {};
  for (const [i, want] of wanted.entries()) {
    const got = decoded(given[i] ?? '');
    if (got === undefined) return undefined;
    if (want.startsWith(':')) at[want.slice(1)] = got;
    else if (want !== got) return undefined;
  }
  return at;
}

const segments = (path: string): string[] => path.split('/').filter((segment) => segment !== '');

/** A hand-typed address may hold a broken escape. */
function decoded(segment: string): string | undefined {
  try {
    return decodeURIComponent(segment);
  } catch {
    return undefined;
  }
}
