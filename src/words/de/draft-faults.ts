import type { words as english } from '../en/draft-faults.ts';
import type { Translation } from '../message.ts';

export const words = {
  'bad length': 'Gib hier eine Länge an, höchstens {mostMm}.',
  'ease below nothing': 'Mit dieser Zugabe bleibt von {bodyMm} nichts übrig.',
  'bad cap ease': 'Eine Armkugel hat −20 bis 50\u00a0% Mehrweite, nicht {percent}\u00a0%.',
  'bad buttons': 'Eine Blende hat 0 bis 60 Knöpfe, nicht {buttons}.',
  'swatch incomplete':
    'Die Maschenprobe für {fabric} ist unvollständig: gib Maschen, Reihen und die Strecken dazu an.',
  'too few stitches': 'Das ergibt {stitches} Maschen. Nimm feineres Garn oder ein größeres Maß.',
  'no neck': 'Der Ausschnitt ergibt keine Masche. Mach ihn breiter.',
  'back wider than chest':
    'Die Rückenbreite ({acrossMm}) ist größer als das Teil an der Achsel ({underarmMm}). Nimm eine überschnittene Schulter oder mehr Zugabe an der Brust.',
  'armhole too shallow': 'Das Armloch hat nur {rows} Reihen, zu wenige für seine Form. Mach es tiefer.',
  'raglan without sleeves':
    'Ein Raglan ohne Ärmel hat keine Schulter, die Vorder- und Rückenteil verbindet. Nimm ein anderes Armloch, oder ein Strickstück mit Ärmeln.',
  'neck too wide':
    'Ein Ausschnitt von {neckMm} lässt von den {acrossMm} zwischen den Armlöchern zu wenig für die Schultern. Mach ihn schmaler.',
  'raglan neck too narrow':
    'Der Ausschnitt hat {neckStitches} Maschen, für einen Raglan braucht er mindestens {leastStitches}. Mach ihn breiter.',
  'raglan neck too wide':
    'Ein Ausschnitt von {neckStitches} Maschen lässt von {underarmStitches} nichts für die Raglanlinien. Mach ihn schmaler, oder die Achsel kleiner.',
  'band wider than neck':
    'Eine Blende von {bandMm} lässt von einem Ausschnitt von {neckMm} nichts übrig. Nimm eine schmalere Blende oder einen breiteren Ausschnitt.',
  'too short':
    'Zwischen Bund und Achsel bleibt nichts: {lengthMm} insgesamt, davon {armholeMm} Armloch. Mach es länger.',
  'neck too deep': 'Der Ausschnitt reicht in den Bund. Er kann höchstens {mostMm} tief sein.',
  'waist outside the side':
    'Die Taille liegt {waistMm} über der Unterkante, nicht zwischen Bund und Achsel. Ändere die Länge, oder nimm einen geraden Rumpf.',
  'more shapings than rows':
    '{stitches} Maschen an jeder Kante passen nicht in {rows} Reihen, auch nicht in jeder Reihe eine. Gib mehr Reihen oder weniger Maschen.',
  'sleeve too short': 'Über dem Bündchen bleibt vom Ärmel nichts. Mach ihn länger.',
  'cuff too narrow to widen':
    'Die Reihe über dem Bündchen ginge von {cuffStitches} auf {sleeveStitches} Maschen. Nimm einen schrägen Ärmel, oder mach das Bündchen weiter.',
  'cap does not fit':
    'Ein Ärmel von {widthMm} ist zu weit für dieses Armloch: auch eine flache Kugel ist länger. Mach das Armloch tiefer oder den Ärmel schmaler.',
  'sleeve too narrow':
    'Der Ärmel hat {stitches} Maschen, zu wenige für einen Raglan. Mach ihn weiter, oder die Achsel schmaler.',

  'head does not pass':
    'Die Halskante misst {neckMm} und dehnt sich auf etwa {opensMm}, weniger als der Kopf ({headMm}). Mach den Ausschnitt breiter oder tiefer, oder öffne ihn.',
  'unusual ease': 'Eine Zugabe von {easeMm} ist hier ungewöhnlich (üblich: {leastMm} bis {mostMm}).',
  'more shapings than right side rows':
    '{stitches} Maschen an jeder Kante in {rows} Reihen: manche müssen in Rückreihen gearbeitet werden.',
  'cap out of proportion':
    'Die Kugel zu diesem Armloch ist {capMm} hoch, das Armloch {depthMm} tief. Ein Ärmel von {widthMm} passt schlecht dazu.',
  'sleeve top narrower than the arm':
    'Zweimal das Armloch macht einen Ärmel von {widthMm} für einen Oberarm von {armMm}. Mach das Armloch tiefer.',
  'cuff wider than sleeve': 'Das Bündchen ({cuffMm}) ist weiter als der Ärmel oben ({topMm}).',
  'rib multiple':
    '{stitches} Maschen passen nicht zu {fabric}; {belowStitches} oder {aboveStitches} würden passen.',
  'front neck above back neck':
    'Der Ausschnitt ist vorn {frontMm} und hinten {backMm} tief. Meist ist er vorn tiefer.',
  'narrow at the hip':
    'Es reicht über die Hüfte von {hipMm} und ist dort {hemMm} weit. Nimm einen schrägen Rumpf oder mehr Zugabe.',
  'too many buttons':
    '{buttons} Knopflöcher passen nicht auf {stitches} Maschen. Die Blende hat jetzt keine.',
  'narrow shoulder': 'Für jede Schulter bleiben nur {stitches} Maschen.',
} as const satisfies Translation<typeof english>;
