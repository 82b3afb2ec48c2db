/** What keeps a garment from being drafted, and what to look at before it is knitted. */
export interface DraftFaults {
  'ease below nothing': 'bodyMm';
  'bad cap ease': 'percent';
  'bad buttons': 'buttons';
  'swatch incomplete': 'fabric';
  'bad length': 'mostMm';
  'head does not pass': 'neckMm' | 'opensMm' | 'headMm';
  'too few stitches': 'stitches';
  'no neck': never;
  'back wider than chest': 'acrossMm' | 'underarmMm';
  'armhole too shallow': 'rows';
  'raglan without sleeves': never;
  'neck too wide': 'neckMm' | 'acrossMm';
  'band wider than neck': 'bandMm' | 'neckMm';
  'too short': 'lengthMm' | 'armholeMm';
  'neck too deep': 'mostMm';
  'waist outside the side': 'waistMm';
  'raglan neck too narrow': 'neckStitches' | 'leastStitches';
  'raglan neck too wide': 'neckStitches' | 'underarmStitches';
  'more shapings than rows': 'stitches' | 'rows';
  'sleeve too short': never;
  'cuff too narrow to widen': 'cuffStitches' | 'sleeveStitches';
  'cap does not fit': 'widthMm';
  'sleeve too narrow': 'stitches';
  'unusual ease': 'easeMm' | 'leastMm' | 'mostMm';
  'more shapings than right side rows': 'stitches' | 'rows';
  'cap out of proportion': 'capMm' | 'depthMm' | 'widthMm';
  'sleeve top narrower than the arm': 'widthMm' | 'armMm';
  'cuff wider than sleeve': 'cuffMm' | 'topMm';
  'rib multiple': 'stitches' | 'fabric' | 'belowStitches' | 'aboveStitches';
  'front neck above back neck': 'frontMm' | 'backMm';
  'narrow at the hip': 'hipMm' | 'hemMm';
  'too many buttons': 'buttons' | 'stitches';
  'narrow shoulder': 'stitches';
}
