import type { words as english } from '../en/draft-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  // ce qui est impossible
  'bad length': 'Donnez ici une longueur, jusqu’à {mostMm}.',
  'ease below nothing': 'Avec cette aisance il ne reste rien de {bodyMm}.',
  'bad cap ease': 'Une tête de manche se soutient de −20 à 50\u00a0%, pas de {percent}\u00a0%.',
  'bad buttons': 'Une bande a de 0 à 60 boutons, pas {buttons}.',
  'swatch incomplete':
    'L’échantillon en {fabric} n’est pas complet : donnez mailles, rangs et sur quoi ils ont été comptés.',
  'too few stitches': 'Cela fait {stitches} mailles. Prenez un fil plus fin ou une mesure plus grande.',
  'no neck': 'L’encolure n’a aucune maille. Faites-la plus large.',
  'back wider than chest':
    'La carrure ({acrossMm}) est plus large que la pièce sous les bras ({underarmMm}). Prenez une épaule tombante, ou plus d’aisance à la poitrine.',
  'armhole too shallow':
    'L’emmanchure n’a que {rows} rangs, trop peu pour son façonnage. Faites-la plus profonde.',
  'raglan without sleeves':
    'Un raglan sans manches n’a pas d’épaule qui tienne devant et dos ensemble. Prenez une autre emmanchure, ou un vêtement à manches.',
  'neck too wide':
    'Une encolure large de {neckMm} laisse trop peu des {acrossMm} entre les emmanchures pour les épaules. Faites-la plus étroite.',
  'raglan neck too narrow':
    'L’encolure a {neckStitches} mailles, et un raglan en demande {leastStitches} ou plus. Faites-la plus large.',
  'raglan neck too wide':
    'Une encolure de {neckStitches} mailles ne laisse rien de {underarmStitches} pour les lignes de raglan. Faites l’encolure plus étroite, ou le dessous de bras plus petit.',
  'band wider than neck':
    'Une bordure devant de {bandMm} ne laisse rien d’une encolure de {neckMm}. Prenez une bordure plus étroite ou une encolure plus large.',
  'too short':
    'Il ne reste rien entre la bordure du bas et le dessous de bras : {lengthMm} en tout, dont {armholeMm} d’emmanchure. Faites-le plus long.',
  'neck too deep':
    'L’encolure descend dans la bordure du bas. Elle peut avoir au plus {mostMm} de profondeur.',
  'waist outside the side':
    'La taille est à {waistMm} au-dessus du bord inférieur, pas entre la bordure du bas et le dessous de bras. Changez la longueur, ou prenez un corps droit.',
  'more shapings than rows':
    '{stitches} mailles à chaque bord n’entrent pas dans {rows} rangs, même une à chaque rang. Donnez plus de rangs ou moins de mailles.',
  'sleeve too short': 'Il ne reste rien de la manche au-dessus de son poignet. Faites-la plus longue.',
  'cuff too narrow to widen':
    'Le rang au-dessus du poignet passerait de {cuffStitches} mailles à {sleeveStitches}. Faites une manche en biais, ou un poignet plus large.',
  'cap does not fit':
    'Une manche large de {widthMm} est trop large pour cette emmanchure : même une tête plate est plus longue. Faites l’emmanchure plus profonde ou la manche plus étroite.',
  'sleeve too narrow':
    'La manche a {stitches} mailles, trop peu pour un raglan. Faites-la plus large, ou le dessous de bras plus petit.',

  // mises en garde
  'head does not pass':
    'Le bord d’encolure mesure {neckMm} et s’étire à environ {opensMm}, moins que la tête ({headMm}). Faites l’encolure plus large ou plus profonde, ou ouvrez-la.',
  'unusual ease': 'Une aisance de {easeMm} sort de l’habituel ici ({leastMm} à {mostMm}).',
  'more shapings than right side rows':
    '{stitches} mailles à chaque bord sur {rows} rangs : certaines sont à façonner sur des rangs envers.',
  'cap out of proportion':
    'La tête de manche qui va à l’emmanchure a {capMm} de haut, l’emmanchure {depthMm} de profondeur. Une manche large de {widthMm} lui va mal.',
  'sleeve top narrower than the arm':
    'Deux fois l’emmanchure font une manche large de {widthMm} pour un haut de bras de {armMm}. Faites l’emmanchure plus profonde.',
  'cuff wider than sleeve': 'Le poignet ({cuffMm}) est plus large que la manche en haut ({topMm}).',
  'rib multiple':
    '{stitches} mailles ne conviennent pas à {fabric} ; {belowStitches} ou {aboveStitches} iraient.',
  'front neck above back neck':
    'L’encolure a {frontMm} de profondeur devant et {backMm} derrière. D’ordinaire, celle de devant est la plus profonde.',
  'narrow at the hip':
    'Il descend sur les hanches, {hipMm} de tour, avec {hemMm} de tour. Prenez un corps en biais, ou plus d’aisance.',
  'too many buttons':
    '{buttons} boutonnières n’entrent pas le long de {stitches} mailles. La bande n’en a maintenant aucune.',
  'narrow shoulder': 'Il ne reste que {stitches} mailles pour chaque épaule.',
} as const satisfies Translation<typeof english>;
