/**
 * What a construct asks of a word, and every word that answers to it: the trade's usage, common practice, no published
 * source. Words as `vocabulary.ts` has them; where a construct asks what stands in the text, its spellings too.
 */
const table = {
  // '(RS)', '(k1, yo)', '(make 2)', '(S, M)': more than a comment
  'in brackets that say something':
    'k p yo sl s inc dec tog ssk skp m t c tbl rs ws right wrong side make knit both alike rep bo co bind cast turn st sts ' +
    'xs l xl xxl small medium large work dc sc w * when until ends end ending row- -k us uk mm cm in inch inches k1 ' +
    'once twice thrice',
  'beginning of a comment':
    'that altogether once twice thus thereby ie edit worked by see note measured measuring optionally optional including',
  'beside rows in all':
    'in all total completed worked altogether band patt pattern pat of rib border made done form a ridge 1',
  'place of a shaping': 'neck armhole raglan sleeve side seam shoulder v front waist',
  'shaping by name': 'dec inc shaping edge decrease increase',
  'ordinal ending': 'st nd rd th d',
  'ending of a number': 'st nd rd th cm cms mm in ins inches inch "',

  // sizes
  size: 'size sizes',
  'no name of a size':
    "size sizes cm in inches ins year years yr yrs month months ladies men women chest bust s'",
  'age of a size': 'year years yr yrs month months mo mos',
  'between sizes': 'and size sizes or',
  'after a list of sizes': 'st sts stitches stitch cm in ins inches mm times rows row " more )',
  'before numbers of rows': 'row rows rnd rnds round rounds and to - , /',

  // where a line and a sentence end
  'beginning of a line that was lost':
    'next row rows work cast cont continue knit purl shape with change rep repeat bind',
  'before a blank that was lost': 'until ending cm cms ins row rows sts next each from',
  'behind a blank that was lost':
    'ending until armhole piece work front back sleeve from each every next row rows end on',
  'hanging at the end of a line':
    'from to of the a an next every each and at with last rem foll in for on until beg then dec inc sl k p rep ending ' +
    'bind cast row rows alt other st or approx is into same first second all place pick up rejoin as measures',
  'may end a row': 'row rows',
  'before next': 'of on in at each every the over',
  'begins a numbered step':
    'work continue cont with using shape change cast bind place join rejoin next repeat rep leave sl slip',
  'beginning of a sentence':
    'row rows rnd rnds round rounds next rep repeat k p knit purl work cont continue bind cast bo co dec inc change ' +
    'with using shape back front left right sleeve sleeves place rejoin join pick beg sl slip leave complete size sizes ' +
    'gauge tension at turn note divide break then starting commence commencing join pm set',
  'within a sentence':
    'beg at sts st in of on to and until ending from for then with times more remain rem remaining back front left right sleeve using into as',
  'beginning of a label': 'row rows next rnd rnds',
  'row with a number of its own': 'dec inc buttonhole',
  'before a row that is only spoken of':
    'and to - of from rep repeat every , at on as until end beg each in with last for next same through work &',

  // rows
  'beginning of a row':
    'k p sl * ( [ yo inc dec bo bind cast work rep as same ssk skp all kfb pfb kbf rib patt m skpo keeping winding purling knitting seed moss join',
  'beginning of a broken row': '* ( [ k p s sl work bind cast bo',
  'stitch after a star': 'k p knit purl yo o over sl ( [ ssk skp m c t rib with using',
  'sounds like work':
    'k p knit purl row rows rnd inc dec increase decrease bind cast bo co yo sl slip cable pattern rib ssk tog st sts ' +
    'stitch stitches turn work continue rep repeat buttonhole motif chart',
  'before a number of rows to work':
    'work working for further another next foll more cont k p knitting complete',
  'before a round':
    'next every each this last first other alt foll dec inc 1 previous final same set-up purl knit rib k p',
  'closes a round': 'rnd ring circle twist twisting twisted circularly',
  'as she likes': 'want like wish desire desired need prefer required wanted',
  // '(k every row)', '(k 1 row, p 1 row)', '(k on RS, p on WS)'
  'how a fabric is worked':
    'k p knit purl plain every each all st sts the row rows on right wrong side rs ws , and',
  'end that is seen':
    'measures goes go reaches reach reached fits fit meets meet covers cover matches long wide deep',
  // what ends within a row, or by a count, or is an order
  'no end that is seen':
    'st sts end row rows marker m last next gap bind cast bo co dec inc k p sl tog turn rep work cont rem remain remains left over',
  'beginning of an aside':
    'keeping keep maintaining taking bringing incorporating including noting making working while whilst at remembering slipping ' +
    'continuing measured measuring counting but omitting alternating',
  'joins two orders': 'and then & while whilst',
  'counted at the end': 'st sts',
  'beginning of an order':
    'k p work working bind cast co bo boff dec decreasing inc increasing cont continuing rep repeating sl knitting ' +
    'purling pick rejoin',
  'speaks of stitches that wait':
    'holder holders pin pins held hold wait waiting resting spare waste live unworked graft grafted grafting rejoin',
  'set of stitches': 'st sts stitch stitches group set',
  'where stitches wait': 'left from on of',
  'other of two': 'other second opposite remaining',
  'one of two sides': 'side half shoulder front edge group set st sts stitches',
  three: '3 three',
  'stitches of a row by name':
    'border band edge edging front back shoulder sleeve neck armhole underarm pocket',
  bids:
    'place put leave shape divide transfer return turn bind bo cast co k p work dec inc rep sl keep make take on over with ' +
    'complete finish continue cont pick rejoin join shape starting beg rev reversing do close wind hold use add ' +
    'lose narrow widen drop wrap bring alternate change switch same',
  'works before a cast-on': 'k p work bind bo boff dec inc rep sl pick row rows rnd st sts end turn then',
  'no name of a row': 'row rows rs ws k p next last these every each even in from first second third fourth',
  'not in a name of a row': 'k p work rep every each to last dec inc in at until for of bind cast then',
  'forms a pattern': 'form forms set sets establish complete constitute constitutes',
  'says what rows are':
    'form forms set sets establish establishes completes complete constitute constitutes is are',
  'takes up wraps': 'pick picking working hiding lifting knitting purling',
  'end of a row': 'end ending ends finish finishing',
  'says nothing between stitches':
    ', ; : . - / and then end ending ends with finish finishing now to loosely firmly across row by the also again last ' +
    'next sts st thus as follows foll of is are = ! wyif wyib yb yarn back front bring turn',
  'special in a row': 'join rejoin attach add tie turn w wt wrap wrapping end ending last instead',
  'joins yarn': 'join attach add tie',
  yarn: 'yarn ball wool skein',
  'colour by name': 'stripe stripes striped striping color colour colors colours',
  'letter of a yarn': 'a b c d e f g',
  'name of a yarn':
    'mc cc ca cb cd main contrast contrasting white black red blue green yellow pink grey gray brown cream navy natural ' +
    'orange purple lilac beige color colour light dark pale bright',
  'changes the count': 'inc dec increasing decreasing',
  'how far':
    'to until up upto all straight in every each the rem remainder back even around entire row whole across over along alternately ' +
    'alternating alt',
  'how often': 'a another for once twice thrice x total',

  // counts
  changed: 'dec decs decreased inc incs increased',
  'after a stated count':
    'rem remain remains remaining left right front on needle needles now total in all altogether the each side for at end of row ' +
    'inc incs increased dec decs decreased have are is should be , made ' +
    'this when been completed worked increases decreases',
  'before a stated count':
    'so now leaving making total of have has are is should be will you there giving to in all a = and thus then leaves ' +
    'makes gives still must',

  // pieces and places
  'piece with a cast-on of its own': 'back front fronts sleeve sleeves left right pocket pockets',
  'note of a line': 'note notes n.b nb',
  'made again': 'sleeve piece pocket band cuff sock mitten mitt bootie strap tie flap',
  announces: 'make begin beg start work shape now dec inc',
  'fabric by name': 'rib stocking garter moss patt st',
  'which of two': 'left right first other second',
  'one of two in a heading': 'left right first second',
  'the one or the other': 'first other second',
  'left half': 'left fronts',
  'whole on either side':
    'sleeve sleeves cuff cuffs mitten mittens mitt mitts sock socks bootie booties leg legs pocket pockets wristlet wristlets',
  'half of a piece': 'side half shoulder',
  'whose stitches':
    'first second right left other the of and neck neckline neckband collar armhole back front shoulder thumb hood ' +
    'side half each center edge later',
  'side of a neck': 'side shoulder',
  'how many in a heading': 'make knit work cut',
  'says how many': 'make both knit alike work',
  'makes two': 'both alike pair',
  'mirror image in a heading': 'mirror mirrored reversed reversing',
  'pieces made twice':
    'sleeves armbands pockets fronts booties mittens mitts cuffs ties straps wristlets bands legs socks',
  'band of a neck': 'neckband band border edging collar',
  'dash behind a heading': '- .',
  'beside a shaping in a heading': 'shape shaping decreases increases for the and of begin divide st nd edge',
  'no name of a piece':
    'row rows rnd rnds round rounds next last first second size sizes gauge tension this these then now and with using cast ' +
    'work all note both before after for to at on in armhole armholes neck underarm shoulder sleeve thumb heel',
  'heading without rows':
    'finishing materials abbreviations measurements note notes needles yarn making makeup assembly blocking pressing ' +
    'general tips equipment supplies terms schematic level special',

  'part that rows make':
    'section part edge edging border panel brim crown heel toe instep gusset flap cuff hood yoke welt hem',

  // making up
  'heading of the making up': 'finishing making makeup assembly assembling joining',
  'order to make up': 'make finish assemble',
  'joins edges': 'sew join seam close graft set',
  'lays flat': 'block press steam dampen',
  'hides ends': 'weave darn',
  'into an armhole': 'in into',
  'beginning of a piece': 'beginning beg start',
  'tail of a place':
    'on off edge - sts st row shaping at the of rib armhole underarm dec inc band rnd ridge up border bind cast line shapings ' +
    'offs neck hem work rows bound for',
  'what is measured':
    'piece work it back front fronts sleeve sleeves armhole rib border band strip neck total side edge section panel ' +
    'garter knitting length raglan yoke hood cuff neckband collar body hem skirt bodice scarf square pocket shoulder ' +
    'this cap tie belt strap all same sweater jacket cardigan muffler shawl vest garment stole hat blanket afghan',
  'beside what is measured':
    'left right entire whole of edge depth the from st patt straight longest shortest point',
  'along an edge': 'evenly along around from across down up at on off the in loosely',

  // fabrics and patterns
  'beside the name of a pattern': 'pattern patt pat stitch st the main in work as a',
  'beside the name of a multiple': 'pattern patt pat stitch st is a worked over the on',
  'beside the name of rows': 'the a patt pattern st stitch in as',
  'beside a title': 'pattern patt stitch st',
  'no pattern of its own': 'pattern main same this it body border band',
  'not in the name of a fabric':
    'until for to and across row rows even straight without st sts from at on dec inc decreasing increasing k p bo bind cast co sl yo next last ' +
    'each every place rep end ending beg left right shape working then when of',
  'after a stitch count': 'tog row rows st sts rnd rnds cm in inch',
  'after a multiple': 'for edge extra over end sts , selvedge ) ] st balance',

  // what else a sentence is about
  needles: 'needle needles ndl ndls pin pins',
  'not about a needle': 'cast co work k p pick rejoin until facing bind',
  'tells without rows':
    'block press sew weave steam fold seam stitch wash measure finishing note notes turn-up attach overcast darn crochet ' +
    'abbreviations materials instructions directions changes repeat-for run draw gather allow lay pin cover dampen ' +
    'make-up back-stitch backstitch insert this these when do join size sizes to needles yarn you',
  'goes on': 'begin do work make cont proceed working continuing keep keeping go rib knitting carry',
  'made as another': 'work k make cast shape complete finish follow cont begin working do',
  'is as much as': '= to per make equal equals in over measure measures are on a',
  'beginning of a pick-up':
    'with from using on pick pu beg starting join holding right rs working along at k sl',
} as const satisfies Readonly<Record<string, string>>;

export type Meaning = keyof typeof table;

const words = new Map<string, ReadonlySet<string>>(
  Object.entries(table).map(([meaning, list]) => [meaning, new Set(list.split(' '))]),
);

/** Whether a word, or a mark, answers to it. */
export const means = (word: string | undefined, meaning: Meaning): boolean =>
  word !== undefined && words.get(meaning)?.has(word) === true;

/** Every word and mark that means something to a construct. */
export const knownToMean = (): readonly string[] => [...words.values()].flatMap((list) => [...list]);

const made = new Map<string, RegExp>();

/** A pattern around all words of a meaning: `\b(?:…)\b` for '\\b' and '\\b'. */
function around(before: string, meaning: Meaning, after: string, flags: string): RegExp {
  const key = [before, meaning, after, flags].join();
  const known = made.get(key);
  if (known) return known;
  const any = table[meaning].split(' ').map((word) => word.replace(/[^\w]/g, '\\$&'));
  const pattern = new RegExp(`${before}(?:${any.join('|')})${after}`, flags);
  made.set(key, pattern);
  return pattern;
}

/** Whether a text has such a word in it; as it stands, capitals count. */
export const hasWord = (text: string, meaning: Meaning): boolean =>
  around('\\b', meaning, '\\b', '').test(text);

/** Whether a text begins with such a word, in capitals or not. */
export const beginsWith = (text: string, meaning: Meaning): boolean =>
  around('^', meaning, '\\b', 'i').test(text);

/** Whether it ends with one, in capitals or not. */
export const endsWith = (text: string, meaning: Meaning): boolean =>
  around('(?:^|[\\s(])', meaning, '$', 'i').test(text);

/** Whether it begins with a number that has such an ending. */
export const beginsWithNumber = (text: string, meaning: Meaning): boolean =>
  around('^\\d+', meaning, '\\b', 'i').test(text);

/** The text without such words, its blanks single. */
export const withoutWords = (text: string, meaning: Meaning): string =>
  text
    .replace(around('\\b', meaning, '\\b', 'g'), ' ')
    .replace(/\s+/g, ' ')
    .trim();
