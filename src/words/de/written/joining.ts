import type { Phrase } from '../../../knit/making-up/phrases.ts';
import type { BandEdge } from '../../../knit/making-up/step.ts';
import type { JoiningWords } from '../../../knit/written/written-words.ts';
import { nameIn } from '../../name-in.ts';
import { words as draft } from '../draft.ts';

const named = nameIn(draft);

const units = { rows: ['Reihe', 'Reihen'], stitches: ['Masche', 'Maschen'] } as const;
const counted = (count: number, unit: 'rows' | 'stitches'): string =>
  `${count} ${units[unit][count === 1 ? 0 : 1]}`;

function edges({
  unit,
  both: { first, second, oneMoreEvery },
  isFarOff,
}: Pick<Extract<Phrase, { say: 'edges' }>, 'unit' | 'both' | 'isFarOff'>): string {
  const met = `${counted(first, unit)} an ${counted(second, unit)}`;
  if (isFarOff) return `${met}: das passt nicht zusammen.`;
  return oneMoreEvery > 0
    ? `${met}; nach je ${oneMoreEvery} von der längeren Kante eine mehr nehmen.`
    : `${met}.`;
}

const necks = { 'front neck': 'vorderen Halskante', 'back neck': 'hinteren Halskante' } as const;

function neckEdge({ along, rows, ratio, stitches }: BandEdge): string {
  if (along === 'side of neck')
    return rows === undefined || ratio === undefined
      ? `An jeder Seite des Ausschnitts ${stitches} rechnen.`
      : `An jeder Seite des Ausschnitts ${stitches} rechnen, je ${ratio.stitches} auf ${ratio.rows} ihrer ${rows} Reihen.`;
  return `An der ${necks[along]} ${stitches} rechnen, je eine aus jeder Masche.`;
}

const ways = {
  mattress: 'Im Matratzenstich nähen.',
  'three-needle': 'Beide Kanten rechts auf rechts mit einer dritten Nadel zusammen abketten.',
  grafted: 'Beide Kanten im Maschenstich verbinden.',
  sewn: 'Kante an Kante flach zusammennähen.',
} as const;

const sides = { left: 'Linke', right: 'Rechte' } as const;
const lines = {
  'left back': 'linke hintere',
  'right back': 'rechte hintere',
  'left front': 'linke vordere',
  'right front': 'rechte vordere',
} as const;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const raglans = {
  four: 'alle vier Linien von der Achsel bis zum Hals:',
  three: 'drei Linien von der Achsel bis zum Hals:',
  'one has an opening': 'drei Linien von der Achsel bis zum Hals:',
  'of one sleeve': 'die Linien dieses Ärmels von der Achsel bis zum Hals:',
} as const;

/** The making up; the words are those of the screens, common practice, no published source. */
export const joining: JoiningWords = {
  title: {
    block: ({ piece, makes }) => `${named(piece)} spannen${makes > 1 ? `, ${makes}-mal` : ''}`,
    shoulders: ({ seams, side = 'right' }) =>
      seams > 1 ? 'Beide Schulternähte schließen' : `${sides[side]} Schulternaht schließen`,
    'pick up': ({ band }) => `${named(band)} stricken, wie oben angegeben`,
    close: ({ seam }) =>
      seam &&
      (seam.of === 'raglan'
        ? `${capital(lines[seam.line])} Raglannaht schließen`
        : `${sides[seam.line.startsWith('left') ? 'left' : 'right']} Schulternaht schließen`),
    'neck edge': () => undefined,
    raglan: () => 'Raglannähte schließen',
    'set in sleeves': () => 'Ärmel einsetzen',
    'side seams': () => 'Seitennähte schließen',
    'sleeve seams': () => 'Ärmelnähte schließen',
    buttons: () => 'Knöpfe annähen',
    opening: ({ of }) =>
      of === 'back' ? 'Öffnung am Rücken fertigstellen' : 'Öffnung am Raglan fertigstellen',
    lap: () => undefined,
    ends: () => undefined,
    join: ({ edges: [a, b] }) =>
      a && b ? `${named(a.stretch.piece)} mit ${named(b.stretch.piece)} verbinden` : 'Von Hand verbinden',
  },
  nos: (nos) => `, Nr. ${nos.join(', ')}`,
  colon: ':',
  goesOn: (line) => line,
  said: {
    'block to': ({ widthMm, heightMm }, length) => `${length(widthMm)} breit, ${length(heightMm)} hoch.`,
    edges,
    way: ({ how }) => ways[how],
    'picked up': ({ total }) => `insgesamt ${total} Maschen.`,
    ratio: ({ ratio }) => `Entlang der Reihen ${ratio.stitches} Maschen auf ${ratio.rows} Reihen.`,
    share: ({ percent }) => `${percent} Maschen auffassen für je 100, für die am Rand Platz ist.`,
    'a shoulder waits': ({ worn }) =>
      `Die ${sides[worn].toLowerCase()} Schulter bleibt offen, bis die Blende gestrickt ist.`,
    'a line waits': ({ line }) => `Die ${lines[line]} bleibt offen, bis die Blende gestrickt ist.`,
    'first the open shoulder': () => [],
    'first the open line': () => [],
    'ends of the band': ({ band, rows }) =>
      `Die Enden zusammennähen (${named(band)}): ${counted(rows, 'rows')} an ${counted(rows, 'rows')}.`,
    neck: ({ edges: all, total }) => [
      ...all.map(neckEdge),
      `Insgesamt etwa ${total} Maschen für eine Blende rechnen.`,
    ],
    'raglan lines': ({ which }) => raglans[which],
    underarm: ({ underarm: { stitches, rows }, isOwn }) =>
      `An der Achsel ${stitches === 1 ? 'die 1 abgekettete Masche' : `die ${stitches} abgeketteten Maschen`} ${isOwn ? 'an die des Ärmels' : `an die ${rows} obersten Reihen der Ärmelseite`} nähen.`,
    marker: ({ rows, mm }, length) =>
      `Die Seitenkanten ${counted(rows, 'rows')} (${length(mm)}) unter der Schulternaht markieren und zwischen den Markierungen einsetzen.`,
    'middle of the top': 'Die Mitte der Oberkante an die Schulternaht stecken.',
    quarters: ({ rows }) =>
      `Die Viertelpunkte stecken, von der Achsel aus gezählt: Reihen ${rows.join(' / ')}.`,
    'top and armhole': ({ topMm, armholeMm, meet }, length) =>
      `Die Ärmelkante misst ${length(topMm)}, das Armloch ${length(armholeMm)}${meet ? '' : '; das Längere gleichmäßig einhalten'}.`,
    loop: ({ rows, of }) =>
      `${counted(rows, 'rows')} tief; ${of === 'back' ? 'ein Knopf kommt an die eine Seite, eine Schlinge an die andere' : 'ein Knopf kommt an die Kante des Rückenteils, eine Schlinge an die des Ärmels'}.`,
    lap: ({ of, rows, band = '' }) => {
      if (of === 'left shoulder')
        return `Die linke vordere Schulter mit ihrer Blende, ${counted(rows, 'rows')}, über die hintere legen. Die beiden Lagen nur am Armloch zusammennähen.`;
      return of === 'both shoulders'
        ? `Das Rückenteil mit seiner Blende, ${counted(rows, 'rows')}, über das Vorderteil legen, die Blende des Vorderteils unter das Rückenteil: die Kanten beider Schultern treffen sich. Die Lagen nur an jedem Armloch zusammennähen; der Ärmel wird durch beide genäht, sein Armloch einmal gemessen, an der oberen Lage.`
        : `Von den beiden Blenden diese über die andere legen (${named(band)}), je ${counted(rows, 'rows')}. Ihr unteres Ende an die abgeketteten Maschen darunter nähen, das der anderen dahinter.`;
    },
    'buttons below': ({ count }) =>
      `${count === 1 ? '1 Knopf' : `${count} Knöpfe`} unter den Löchern an das Rückenteil nähen.`,
    holes: ({ band, stitches }) =>
      `${named(band)}, Löcher: ${stitches.join(' / ')} Maschen über dem unteren Ende.`,
    'buttons opposite': ({ on }) =>
      on === undefined
        ? 'Die Knöpfe gegenüber den Löchern an die andere Blende nähen.'
        : `Die Knöpfe gegenüber den Löchern annähen (${named(on)}).`,
    joined: ({ unit, edges: [a, b], both, isFarOff }, length) =>
      unit === 'mm' ? `${length(a.mm)} an ${length(b.mm)}.` : edges({ unit, both, isFarOff }),
    'one stitch in': 'Von jeder Kante eine ganze Masche in die Naht nehmen.',
    'the left shoulder is buttoned': 'Die linke Schulter wird geknöpft, nicht genäht.',
    'one shoulder waits': 'Eine Schulter offen lassen, bis die Blende gestrickt ist.',
    'the left back line to its opening': 'Die linke hintere nur bis zu ihrer Öffnung schließen:',
    'over the head': 'Erst über den Kopf anprobieren.',
    'before the sleeves': 'Über den Kopf anprobieren, ehe die Ärmel eingenäht werden.',
    'joined evenly': 'Das Längere gleichmäßig einhalten.',
    'an edge is gone': 'Eine der Kanten gibt es nicht mehr.',
    'along the seams': 'Fäden entlang der Nähte vernähen.',
  },
};
