import { describe, expect, it } from 'vitest';
import { type Meaning, means } from '../../../../src/knit/row/read/meanings.ts';
import { HEADINGS, PIECES, SHAPED, SIDES } from '../../../../src/knit/row/read/vocabulary.ts';

/**
 * Of each meaning words that answer to it, written down from leaflets' sentences and not from the list, and words that
 * stand in the same place and do not (common practice, no published source).
 */
const words: Readonly<Record<Meaning, readonly [answer: string, others: string]>> = {
  'in brackets that say something': [
    'k yo tog skp tbl rs wrong side both co turn sts xs large work dc * when until ending row- us cm inch mm k1 xxl cast',
    'lace note optional',
  ],
  'beginning of a line that was lost': ['next row work cast', 'neck sts to'],
  'before a blank that was lost': ['until cm rows ending', 'with in out'],
  'behind a blank that was lost': ['armhole piece ending', 'in out less'],
  'part that rows make': ['edge border heel flap', 'row rib buttonhole'],
  'heading of the making up': ['finishing making makeup assembly', 'materials abbreviations'],
  'order to make up': ['make finish', 'sew block'],
  'joins edges': ['sew join seam graft set', 'pin block knit'],
  'lays flat': ['block press steam', 'sew weave'],
  'hides ends': ['weave darn', 'sew block'],
  'into an armhole': ['in into', 'to and'],
  'speaks of stitches that wait': ['holder waiting pin graft', 'sts sew left'],
  'set of stitches': ['sts group stitches', 'rows side'],
  'where stitches wait': ['left on from', 'to at'],
  'other of two': ['other second', 'first this'],
  'one of two sides': ['shoulder side sts', 'sleeve row'],
  three: ['3 three', '2 third'],
  'stitches of a row by name': ['border band shoulder', 'side sts dec'],
  'joins two orders': ['and then while', 'or until'],
  'counted at the end': ['st sts', 'row cm'],
  'ordinal ending': ['st nd rd th d', 'sts in'],
  'may end a row': ['row rows', 'next end'],
  'before next': ['of on at every the', 'row then'],
  'begins a numbered step': ['work cont using change cast next leave', 'rows k a'],
  'beginning of a comment': ['that once twice altogether see by', 'k rs 4'],
  'beside rows in all': ['in all total worked rib', 'k dec more'],
  'place of a shaping': ['neck armhole raglan sleeve', 'k row'],
  'shaping by name': ['dec inc shaping edge', 'k row'],
  'row with a number of its own': ['dec inc', 'pattern neck'],
  'piece with a cast-on of its own': ['back left front sleeves', 'body border yoke'],
  'note of a line': ['note notes', 'finishing materials'],
  'made again': ['sleeve piece pocket', 'back front row'],
  announces: ['make begin shape', 'k rep'],
  'fabric by name': ['rib garter moss', 'row k'],
  'ending of a number': ['st nd rd th cm mm inch ins "', 'sts rows'],
  size: ['size sizes', 'large cm'],
  'no name of a size': ["cm years months ladies bust s'", 'small toddler'],
  'age of a size': ['years yrs mos', 'cm sts'],
  'between sizes': ['and or size', 'to ,'],
  'after a list of sizes': ['sts cm times rows " )', 'of and'],
  'before numbers of rows': ['row rnds and to - , /', 'of st'],
  'hanging at the end of a line': [
    'from the next each with last foll until inc sl rep ending bind row alt other into same second pick as',
    'armhole end work',
  ],
  'beginning of a sentence': [
    'row rnd next rep purl work cont bind co change with shape left sleeves place join sl complete size gauge at divide then ' +
      'starting pm set',
    'sts of long',
  ],
  'within a sentence': ['sts of until ending then times remain back sleeve using as', 'row change note'],
  'beginning of a label': ['row rows next rnd rnds', 'last k'],
  'before a row that is only spoken of': [
    'and to from repeat every as until each for through work &',
    'k turn',
  ],
  'beginning of a row': ['k * [ inc bind work rep ssk all kfb patt skpo winding seed', 'to cm lace'],
  'stitch after a star': ['k purl yo ( ssk c', 'row to rep'],
  'sounds like work': ['k rnd increase bind yo cable ssk sts stitches turn repeat chart', 'wool lovely'],
  'before a number of rows to work': ['work for another foll cont knitting complete', 'of to'],
  'before a round': ['next every last alt dec 1 final set-up rib p', 'each-other button'],
  'closes a round': ['rnd ring twist circularly', 'row piece'],
  'as she likes': ['want desired required wanted', 'given measured'],
  'beginning of an aside': [
    'keeping taking including making whilst remembering slipping continuing counting omitting',
    'k turn then',
  ],
  'beginning of an order': [
    'k working bind boff decreasing inc cont rep knitting purling pick rejoin',
    'keeping at',
  ],
  bids: [
    'place leave shape divide transfer return bind work rep make on with complete join',
    'the this yarn',
  ],
  'colour by name': ['striped colours color stripes', 'yarn needle red'],
  'letter of a yarn': ['a b c g', 'k m x'],
  'name of a yarn': ['mc cc main contrast white red navy', 'a larger garter'],
  'takes up wraps': ['picking working hiding knitting', 'k leaving'],
  'works before a cast-on': ['k bind boff inc sl rows sts end turn then', 'with using'],
  'no name of a row': ['row ws p next these every even from', 'set-up lace'],
  'not in a name of a row': ['k rep each last inc at until for bind then', 'lace chart'],
  'forms a pattern': ['form sets establish complete constitute', 'is work'],
  'says what rows are': ['form sets establish establishes completes constitutes is are', 'work has'],
  'end of a row': ['end ending ends finish finishing', 'last with'],
  'says nothing between stitches': [
    ', - / then ending finish to loosely across by again last sts thus foll = ! wyib yarn bring turn',
    'k tog marker',
  ],
  'special in a row': ['join attach turn wrap ending last instead', 'k sl'],
  'joins yarn': ['join attach add', 'wrap rejoin'],
  yarn: ['yarn ball wool skein', 'cable thread'],
  'how far': ['to upto straight every the rem back around whole over along', 'of from'],
  'how often': ['a once thrice x total', 'more times'],
  changed: ['dec decreased inc increased', 'rem left'],
  'after a stated count': [
    'rem remains left needles in altogether each for end row inc decreased have should , made',
    'k cast',
  ],
  'before a stated count': [
    'now making of is will there giving all = thus leaves makes still must',
    'k next',
  ],
  'which of two': ['left right first other second', 'back third'],
  'one of two in a heading': ['left right first second', 'other back'],
  'the one or the other': ['first other second', 'left both'],
  'left half': ['left fronts', 'right front'],
  'whole on either side': [
    'sleeve cuffs mittens mitt sock bootie leg pockets wristlet wristlets',
    'front back',
  ],
  'half of a piece': ['side half shoulder', 'front neck'],
  'how a fabric is worked': ['k every row on rs ,', 'work 2 rib'],
  'end that is seen': ['goes reaches fits meets long', 'st end looks'],
  'no end that is seen': ['sts rows marker dec remain', 'fits the strip'],
  'whose stitches': ['left of neck first half', 'sts work'],
  'side of a neck': ['side shoulder', 'half front'],
  'how many in a heading': ['make knit work cut', 'both alike'],
  'says how many': ['make both knit alike work', 'pair cut'],
  'makes two': ['both alike pair', 'make two'],
  'mirror image in a heading': ['mirror mirrored reversed', 'make second image'],
  'pieces made twice': ['sleeves fronts mitts ties wristlets bands socks', 'sleeve back'],
  'band of a neck': ['neckband border edging collar', 'hem rib'],
  'dash behind a heading': ['- .', ': ,'],
  'beside a shaping in a heading': ['shape shaping the of begin st edge', 'armhole k'],
  'heading without rows': [
    'finishing note yarn making assembly pressing general supplies schematic level special',
    'back sleeve',
  ],
  'beginning of a piece': ['beginning beg start', 'end neck'],
  'tail of a place': [
    'edge - sts shaping rib underarm rnd ridge cast line shapings offs hem rows for',
    'until k',
  ],
  'what is measured': [
    'piece it front sleeves rib strip total edge panel garter length raglan cuff collar skirt scarf shoulder this belt same',
    'until yarn',
  ],
  'beside what is measured': ['left entire whole edge depth from patt straight', 'sleeve until'],
  'along an edge': ['evenly around from down at the loosely', 'k sts'],
  'beside the name of a pattern': ['pattern patt st the main work as', 'rows lace'],
  'beside the name of a multiple': ['pattern st is worked over on', 'rows main'],
  'beside the name of rows': ['the a patt pattern st stitch in as', 'row worked'],
  'beside a title': ['pattern patt stitch st', 'the in'],
  'no pattern of its own': ['pattern main this body band', 'lace cable'],
  'not in the name of a fabric': [
    'until row sts at dec increasing p cast sl next each place ending right shape then when of',
    'moss double',
  ],
  'after a stitch count': ['tog rows sts rnd cm inch', 'more in-all'],
  'after a multiple': ['for edge extra end , selvedge ] balance', 'rows next'],
  needles: ['needle ndl pins', 'yarn hook'],
  'not about a needle': ['cast work pick until facing bind', 'change with'],
  'tells without rows': [
    'block sew steam seam wash finishing turn-up overcast darn crochet materials directions repeat-for run gather lay dampen ' +
      'make-up backstitch insert when join sizes needles you',
    'k next shape',
  ],
  'goes on': ['begin work cont proceed keeping go rib carry', 'end cast'],
  'made as another': ['work make shape finish cont working do', 'same sew'],
  'is as much as': ['= to make equals over measures a', 'from with'],
  'beginning of a broken row': ['* ( [ k p s sl work bind cast bo', 'rep row inc'],
  'changes the count': ['inc dec increasing decreasing', 'k row'],
  'no name of a piece': ['row rnds next size gauge tension note armhole neck sleeve', 'trinket star ear'],
  'beginning of a pick-up': ['with using on pick beg join right rs along at sl', 'until cast'],
};

it.each(Object.entries(words) as [Meaning, readonly [string, string]][])(
  '%s',
  (meaning, [answer, others]) => {
    expect(answer.split(' ').filter((word) => !means(word, meaning))).toEqual([]);
    expect(others.split(' ').filter((word) => means(word, meaning))).toEqual([]);
  },
);

/* What leaflets call the pieces of garments and their places; common practice, no published source. */
describe.each<[string, ReadonlySet<string>, answer: string, others: string]>([
  [
    'the pieces of a garment',
    PIECES,
    'back front sleeves hood collar cap body pocket yoke skirt border belt bootie mittens scarf square vest cuff legs panel ' +
      'wristlets blanket cowl shawl ties straps crown brim half sock socks jacket pullover cardigan shell buttonband piece',
    'needle gauge row neck',
  ],
  [
    'which of two, or where it lies',
    SIDES,
    'left upper lower second front neck buttonhole sleeve inner outer center both and or top main shoulder',
    'sleeves row pocket',
  ],
  [
    'a place that is shaped',
    SHAPED,
    'armhole neckline shoulders raglan cap waist v underarm underarms toe thumb dart hips side hem rib welt cuff border ' +
      'gusset pocket opening fingers hood collar right second',
    'gauge row',
  ],
  [
    'a heading that begins no piece',
    HEADINGS,
    'finishing materials measurements needles making assembly blocking pressing instructions terms supplies general tips ' +
      'special pattern level to',
    'sleeve back row',
  ],
])('%s', (_, list, answer, others) => {
  it('is called so', () => {
    expect(answer.split(' ').filter((word) => !list.has(word))).toEqual([]);
    expect(others.split(' ').filter((word) => list.has(word))).toEqual([]);
  });
});
