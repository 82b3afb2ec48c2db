/** What keeps a garment from being drafted, and what to look at before it is knitted, by the fault’s code. */
export const words = {
  // what cannot be
  'bad length': 'Give a length here, up to {mostMm}.',
  'ease below nothing': 'With this ease nothing is left of {bodyMm}.',
  'bad cap ease': 'A cap is eased by −20 to 50%, not {percent}%.',
  'bad buttons': 'A band has 0 to 60 buttons, not {buttons}.',
  'swatch incomplete':
    'The swatch of {fabric} is not complete: give stitches, rows and what they were counted over.',
  'too few stitches': 'That comes to {stitches} stitches. Take a finer yarn or a larger measure.',
  'no neck': 'The neck comes to no stitches. Make it wider.',
  'back wider than chest':
    'Across the back ({acrossMm}) is wider than the panel at the underarm ({underarmMm}). Take a drop shoulder, or more ease at the chest.',
  'armhole too shallow': 'The armhole has only {rows} rows, too few for its shaping. Make it deeper.',
  'raglan without sleeves':
    'A raglan without sleeves has no shoulder that holds front and back together. Take another armhole, or a garment with sleeves.',
  'neck too wide':
    'A neck {neckMm} wide leaves too little of the {acrossMm} between the armholes for the shoulders. Make it narrower.',
  'raglan neck too narrow':
    'The neck comes to {neckStitches} stitches, and a raglan needs {leastStitches} or more there. Make it wider.',
  'raglan neck too wide':
    'A neck of {neckStitches} stitches leaves nothing of {underarmStitches} for the raglan lines. Make the neck narrower, or the underarm smaller.',
  'band wider than neck':
    'A front band of {bandMm} leaves nothing of a neck of {neckMm}. Take a narrower band or a wider neck.',
  'too short':
    'Nothing is left between hem and underarm: {lengthMm} in all, {armholeMm} of them armhole. Make it longer.',
  'neck too deep': 'The neck reaches into the hem. The deepest it can be is {mostMm}.',
  'waist outside the side':
    'The waist lies {waistMm} above the lower edge, not between hem and underarm. Change the length, or take a straight body.',
  'more shapings than rows':
    '{stitches} stitches at each edge do not fit into {rows} rows, not even with one on every row. Give them more rows or fewer stitches.',
  'sleeve too short': 'Nothing is left of the sleeve above its cuff. Make it longer.',
  'cuff too narrow to widen':
    'The row above the cuff would go from {cuffStitches} stitches to {sleeveStitches}. Taper the sleeve, or make the cuff wider.',
  'cap does not fit':
    'A sleeve {widthMm} wide is too wide for this armhole: even a flat cap is longer. Make the armhole deeper or the sleeve narrower.',
  'sleeve too narrow':
    'The sleeve has {stitches} stitches, too few for a raglan. Make it wider, or the underarm smaller.',

  // cautions
  'head does not pass':
    'The neck edge is {neckMm} and stretches to about {opensMm}, less than the head ({headMm}). Make the neck wider or deeper, or open it.',
  'unusual ease': 'An ease of {easeMm} is outside what is usual here ({leastMm} to {mostMm}).',
  'more shapings than right side rows':
    '{stitches} stitches at each edge over {rows} rows: some have to be shaped on wrong side rows.',
  'cap out of proportion':
    'The cap that meets the armhole is {capMm} high, the armhole {depthMm} deep. A sleeve {widthMm} wide suits it badly.',
  'sleeve top narrower than the arm':
    'Twice the armhole makes a sleeve {widthMm} wide for an upper arm of {armMm}. Make the armhole deeper.',
  'cuff wider than sleeve': 'The cuff ({cuffMm}) is wider than the sleeve at its top ({topMm}).',
  'rib multiple': '{stitches} stitches do not fit {fabric}; {belowStitches} or {aboveStitches} would.',
  'front neck above back neck':
    'The neck is {frontMm} deep in front and {backMm} behind. Usually the front is the deeper one.',
  'narrow at the hip':
    'It reaches over the hips, {hipMm} round, with {hemMm} round. Take a tapered body, or more ease.',
  'too many buttons': '{buttons} button holes do not fit along {stitches} stitches. The band has none now.',
  'narrow shoulder': 'Only {stitches} stitches are left for each shoulder.',
} as const;
