/**
 * The trade's words, each once: the word as the reader asks for it, and its other spellings — in full and abbreviated,
 * US and UK, of one and of many where it is the same to the reader. What is asked for by one of them is found by all.
 * A word that is not here stands for itself.
 */
const WORDS: Readonly<Record<string, string>> = {
  // what is done with a stitch
  k: 'knit knits', // a knit stitch, or to make one
  p: 'purl purls pearl', // a purl stitch
  sl: 'slip slipping', // to pass a stitch over unworked
  inc: 'increase increases incs incr incrs', // to make more stitches
  dec: 'decrease decreases decs decr decrs', // to make fewer
  increasing: 'incing incring',
  decreasing: 'decing decring',
  tog: 'together togs tg', // several stitches worked as one
  yo: 'yos yon yrn yfrn yfwd yf yfd wf wfd wrn won ytf yfon', // the yarn laid over the needle
  wyif: 'wyf', // the yarn in front of what is slipped
  wyib: 'wyb',
  psso: 'pssso', // the slipped stitch passed over
  kwise: 'knitwise knitways kw', // the needle put in as for a knit stitch
  pwise: 'purlwise purlways pw',
  bind: 'binding', // US: to close stitches
  cast: 'casting', // on: to make the first ones; off: UK for bind off
  pick: 'picking', // up: stitches out of an edge
  dbl: 'double',
  // stitches and rows
  st: 'stitch stich',
  sts: 'stitches stiches',
  rnd: 'round', // a row worked in a ring
  rnds: 'rounds',
  ridge: 'ridges', // two rows of garter stitch
  patt: 'pattern pat patts',
  pats: 'patterns',
  rib: 'ribbing',
  stocking: 'stockinette stockingette stockinet stock', // UK stocking, US stockinette
  moss: 'seed', // UK moss, US seed
  garter: 'gar',
  gst: 'gtst',
  rev: 'reverse reversed', // the other side of the fabric out
  est: 'established',
  gauge: 'tension scale', // US gauge, UK tension
  // when and how often
  rep: 'repeat rpt',
  foll: 'following fol folls foil follows succeeding',
  rem: 'remaining remg',
  remain: 'remains', // to be left on the needle
  alt: 'alternate altn', // every second one
  each: 'ea',
  beg: 'beginning begg beginnning',
  until: 'till til',
  time: 'times tms',
  cont: 'continue',
  measures: 'meas',
  x: '×',
  and: '&',
  // where
  center: 'centre', // US center, UK centre
  fwd: 'forward',
  through: 'thru',
  between: 'bet btw',
  armhole: 'armholes',
  underarm: 'underarms',
  shoulder: 'shoulders',
  seam: 'seams',
  edge: 'edges',
  loop: 'loops',
  // what it is done with
  needle: 'needles ndls',
  holder: 'holders', // a pin on which stitches wait
  marker: 'markers mk mkr mrk', // a ring on the needle that shows a place
  ball: 'balls',
  place: 'placing',
  leave: 'leaving',
  turn: 'turning',
  // measures
  approx: 'approximately',
  cm: 'cms centimetres centimeters centimetre centimeter',
  mm: 'millimetres millimeters',
  inch: 'inches ins "',
};

const spelled = new Map(
  Object.entries(WORDS).flatMap(([word, spellings]) =>
    spellings.split(' ').map((other) => [other, word] as const),
  ),
);

/** The word that a spelling stands for. */
export const wordOf = (spelling: string): string => spelled.get(spelling) ?? spelling;

/** Every word, in every spelling. */
export const spellings = (): readonly string[] => [...Object.keys(WORDS), ...spelled.keys()];

/** Counts that patterns spell out. */
export const NUMBER_WORDS: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

/** Abbreviations after which a full stop ends no sentence (unless a capital follows). */
export const SHORT = new Set(
  (
    'st sts rep rpt beg foll fol rem inc incs dec decs alt tog no nos approx patt pat cont k p sl rnd rnds wl fwd ' +
    'ins cm cms mm tbl psso ea bet opp meas rh lh rs ws yd yds oz gm gms yo yon yrn kw pw cn dpn dpns mc cc m tw pc pcs ' +
    'work’g wyif wyib bo co nec necess vs incl ctr cent skp ssk col cols lge sm med sz szs gar str stocking stocs stk ' +
    'ss gst mst stock folls incr decr gtst in inch des w bk fd'
  ).split(' '),
);

/** Those of them after which a number goes on with the sentence. */
export const BEFORE_NUMBER = new Set(
  'no nos k p sl inc dec incr decr foll fol rem approx cont rep rpt beg alt ea rnd rnds size next yo'.split(
    ' ',
  ),
);

/** What patterns call the pieces of a garment, in headings. */
export const PIECES: ReadonlySet<string> = new Set(
  (
    'back front fronts sleeve sleeves hood collar neckband cap hat body pocket pockets yoke bodice ' +
    'skirt border band bands belt bootie booties bonnet mitten mittens mitts scarf muffler cover ' +
    'square gusset facing vest waistband armband armbands cuff cuffs leg legs panel strip wristlet wristlets helmet ' +
    'blanket afghan cowl shawl tie ties strap straps flap crown brim edging peplum bib half sock ' +
    'socks bolero jacket coat sweater pullover cardigan slipover shell bag purse frontband buttonband ' +
    'piece lining linings underside tab tabs'
  ).split(' '),
);

/** What a piece is called beside its name: which one of two, where it lies. */
export const SIDES: ReadonlySet<string> = new Set(
  (
    'left right upper lower first second front back neck button buttonhole armhole sleeve inner outer ' +
    'center centre both the and or top half under main shoulder side'
  ).split(' '),
);

/** Places named in a heading beside a word for shaping. */
export const SHAPED: ReadonlySet<string> = new Set(
  (
    'armhole armholes neck neckline shoulder shoulders raglan raglans cap waist v crown top underarm ' +
    'underarms toe heel thumb yoke dart darts hip hips sleeve slope side sides hem ribbing rib welt ' +
    'cuff body border band gusset buttonholes pocket opening fingers hand point back front bust hood ' +
    'collar left right first second'
  ).split(' '),
);

/** What a heading may begin with that is no piece: what follows is told, not knitted. */
export const HEADINGS: ReadonlySet<string> = new Set(
  (
    'finishing materials abbreviations measurements notes note needles yarn making makeup assembly ' +
    'blocking pressing instructions directions terms equipment supplies schematic general tips ' +
    'special pattern level stitches to'
  ).split(' '),
);
