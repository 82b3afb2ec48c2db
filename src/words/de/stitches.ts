import type { Side } from '../../knit/row/step.ts';
import type { CableName, Crossing, Gloss, Glossary } from '../gloss.ts';

const incInto = (times: string): string =>
  `${times} in dieselbe Masche stechen, abwechselnd vorn und hinten, ehe sie von der linken Nadel gleitet.`;

/** Was jede Masche ist und wie sie gestrickt wird, in eigenen Worten. */
export const glossary: Glossary = {
  k: {
    name: 'rechte Masche',
    how: 'Faden hinten. Von vorn in die Masche stechen, den Faden durchholen, die alte Masche gleiten lassen.',
  },
  p: {
    name: 'linke Masche',
    how: 'Faden vorn. Von hinten zu sich hin in die Masche stechen, den Faden durchholen, die alte Masche gleiten lassen.',
  },
  sl: {
    name: 'abheben',
    how: 'Die Masche ungestrickt auf die rechte Nadel nehmen, Spitze an Spitze, ohne sie zu drehen.',
  },
  'sl wyif': {
    name: 'abheben, Faden davor',
    how: 'Den Faden nach vorn legen und die Masche ungestrickt hinübernehmen; der Faden liegt vor ihr.',
  },
  'sl wyib': {
    name: 'abheben, Faden dahinter',
    how: 'Den Faden hinten lassen und die Masche ungestrickt hinübernehmen.',
  },
  'k tbl': {
    name: 'rechts verschränkt',
    how: 'In das hintere Maschenglied stechen und rechts stricken; die Masche dreht sich.',
  },
  'p tbl': {
    name: 'links verschränkt',
    how: 'Von hinten in das hintere Maschenglied stechen und links stricken; die Masche dreht sich.',
  },
  'k1 below': {
    name: 'tiefer gestochen, rechts',
    how: 'In die Masche unter der nächsten stechen und rechts stricken; die obere löst sich mit.',
  },
  'p1 below': {
    name: 'tiefer gestochen, links',
    how: 'In die Masche unter der nächsten stechen und links stricken; die obere löst sich mit.',
  },
  patt: {
    name: 'im Muster stricken',
    how: 'Weiterstricken, wie das Muster es in dieser Reihe an dieser Stelle zeigt.',
  },
  unworked: {
    name: 'wenden',
    how: 'Hier wenden; die Maschen dahinter bleiben, wie sie sind. Die erste Masche des Rückwegs abheben oder doppelt stricken, bei jedem Wenden gleich; die Reihe, die später darüber geht, schließt jede Lücke, sodass kein Loch bleibt.',
  },
  'join yarn': {
    name: 'Faden ansetzen',
    how: 'Der Faden hängt anderswo: abschneiden oder ein anderes Knäuel nehmen und hier beginnen. Etwa 15\u00a0cm hängen lassen.',
  },
  'wrap next st': {
    name: 'nächste Masche umwickeln',
    how: 'Die nächste Masche ungestrickt abheben, den Faden um ihren Fuß auf die andere Seite der Arbeit legen und die Masche zurückheben; dann wenden. So entsteht an der Wendestelle kein Loch.',
  },
  'picking up each wrap': {
    name: 'jede Wicklung mitstricken',
    how: 'Wo eine Masche umwickelt ist, die Wicklung auf die linke Nadel heben und mit der Masche zusammenstricken. Kraus rechts darf sie liegen bleiben: sie fällt nicht auf.',
  },
  ds: {
    name: 'Doppelmasche',
    how: 'Faden vor der Arbeit, die erste Masche abheben; den Faden über die Nadel nach hinten ziehen, bis beide Schenkel der Masche auf der Nadel liegen. Sie zählt als eine Masche.',
  },
  'working each ds as one st': {
    name: 'jede Doppelmasche als eine stricken',
    how: 'Durch beide Schenkel einer Doppelmasche stechen und sie zusammenstricken, als die eine Masche, die sie sind.',
  },
  mb: {
    name: 'Noppe',
    how: 'Mehrere Maschen aus einer stricken, über ihnen hin und her stricken, wie die Anleitung es sagt, und sie wieder zu einer zusammenziehen.',
  },
  k2tog: {
    name: '2 rechts zusammen',
    how: 'In zwei Maschen zugleich stechen und sie wie eine rechts stricken. Eine Masche weniger; sie neigt sich nach rechts.',
  },
  p2tog: {
    name: '2 links zusammen',
    how: 'Zwei Maschen wie eine links stricken. Eine Masche weniger; von der anderen Seite neigt sie sich nach rechts.',
  },
  ssk: {
    name: '2 abheben, zusammenstricken',
    how: 'Zwei Maschen einzeln wie zum Rechtsstricken abheben, mit der linken Nadel von vorn hineinstechen und beide zusammen rechts stricken. Eine Masche weniger; sie neigt sich nach links.',
  },
  ssp: {
    name: '2 abheben, links zusammen',
    how: 'Zwei Maschen einzeln wie zum Rechtsstricken abheben, zurückgeben und links verschränkt zusammenstricken. Eine Masche weniger.',
  },
  skp: {
    name: 'einfacher Überzug',
    how: 'Eine Masche wie zum Rechtsstricken abheben, die nächste rechts stricken, die abgehobene darüberziehen. Eine Masche weniger; sie neigt sich nach links.',
  },
  spp: {
    name: 'Überzug über eine linke',
    how: 'Eine Masche abheben, die nächste links stricken, die abgehobene darüberziehen. Eine Masche weniger.',
  },
  sp2p: {
    name: 'Überzug über 2 links zusammen',
    how: 'Eine Masche abheben, zwei links zusammenstricken, die abgehobene darüberziehen. Zwei Maschen weniger.',
  },
  'k2tog tbl': {
    name: '2 rechts verschränkt zusammen',
    how: 'Zwei Maschen durch ihre hinteren Glieder rechts zusammenstricken. Eine Masche weniger; sie neigt sich nach links.',
  },
  'p2tog tbl': {
    name: '2 links verschränkt zusammen',
    how: 'Von hinten in das hintere Glied der zweiten, dann der ersten Masche stechen und beide links stricken. Eine Masche weniger.',
  },
  k3tog: {
    name: '3 rechts zusammen',
    how: 'Drei Maschen wie eine rechts stricken. Zwei Maschen weniger; sie neigen sich nach rechts.',
  },
  p3tog: { name: '3 links zusammen', how: 'Drei Maschen wie eine links stricken. Zwei Maschen weniger.' },
  'k3tog tbl': {
    name: '3 rechts verschränkt zusammen',
    how: 'Drei Maschen durch ihre hinteren Glieder rechts zusammenstricken. Zwei Maschen weniger; sie neigen sich nach links.',
  },
  'p3tog tbl': {
    name: '3 links verschränkt zusammen',
    how: 'Drei Maschen von hinten durch ihre hinteren Glieder links zusammenstricken. Zwei Maschen weniger.',
  },
  sssk: {
    name: '3 abheben, zusammenstricken',
    how: 'Drei Maschen einzeln wie zum Rechtsstricken abheben, von vorn hineinstechen und rechts zusammenstricken. Zwei Maschen weniger; sie neigen sich nach links.',
  },
  sssp: {
    name: '3 abheben, links zusammen',
    how: 'Drei Maschen einzeln wie zum Rechtsstricken abheben, zurückgeben und links verschränkt zusammenstricken. Zwei Maschen weniger.',
  },
  sk2p: {
    name: 'doppelter Überzug',
    how: 'Eine Masche wie zum Rechtsstricken abheben, zwei rechts zusammenstricken, die abgehobene darüberziehen. Zwei Maschen weniger; sie neigen sich nach links.',
  },
  s2kp: {
    name: '3 mittig zusammen',
    how: 'Zwei Maschen zusammen wie zum Rechtsstricken abheben, die nächste rechts stricken, beide darüberziehen. Zwei Maschen weniger; die mittlere liegt gerade obenauf.',
  },
  s2pp: {
    name: '2 abheben, links, überziehen',
    how: 'Von hinten erst in die zweite, dann in die erste Masche stechen, in die hinteren Glieder, und beide zusammen abheben; die nächste links stricken und beide überziehen. Zwei Maschen weniger; auf der anderen Seite liegt die mittlere obenauf.',
  },
  'sl1 k2 psso': {
    name: 'Überzug über zwei',
    how: 'Eine Masche abheben, zwei rechts stricken, die abgehobene über beide ziehen. Eine Masche weniger.',
  },
  k4tog: { name: '4 rechts zusammen', how: 'Vier Maschen wie eine rechts stricken. Drei Maschen weniger.' },
  p4tog: { name: '4 links zusammen', how: 'Vier Maschen wie eine links stricken. Drei Maschen weniger.' },
  k5tog: { name: '5 rechts zusammen', how: 'Fünf Maschen wie eine rechts stricken. Vier Maschen weniger.' },
  p5tog: { name: '5 links zusammen', how: 'Fünf Maschen wie eine links stricken. Vier Maschen weniger.' },
  drop: { name: 'fallen lassen', how: 'Die Masche ungestrickt von der Nadel gleiten lassen.' },
  dec: {
    name: '1 abnehmen',
    how: 'Aus zwei Maschen eine machen, wie es hier am besten gefällt; zwei zusammenstricken genügt.',
  },
  'dec 2': { name: '2 abnehmen', how: 'Aus drei Maschen eine machen, wie es hier am besten gefällt.' },
  'dec 3': { name: '3 abnehmen', how: 'Aus vier Maschen eine machen, wie es hier am besten gefällt.' },
  'dec 4': { name: '4 abnehmen', how: 'Aus fünf Maschen eine machen, wie es hier am besten gefällt.' },
  m1: {
    name: '1 zunehmen aus dem Querfaden',
    how: 'Den Faden zwischen den Nadeln aufheben und so stricken, dass er sich dreht. Eine Masche mehr.',
  },
  m1l: {
    name: '1 zunehmen, links geneigt',
    how: 'Den Querfaden mit der linken Nadel von vorn aufheben und sein hinteres Glied rechts stricken. Eine Masche mehr.',
  },
  m1r: {
    name: '1 zunehmen, rechts geneigt',
    how: 'Den Querfaden mit der linken Nadel von hinten aufheben und sein vorderes Glied rechts stricken. Eine Masche mehr.',
  },
  m1p: {
    name: '1 links zunehmen',
    how: 'Den Querfaden von vorn aufheben und sein hinteres Glied links stricken. Eine Masche mehr.',
  },
  yo: {
    name: 'Umschlag',
    how: 'Den Faden vor der nächsten Masche von vorn nach hinten über die rechte Nadel legen. Eine Masche mehr, mit einem Loch darunter.',
  },
  'yo twice': {
    name: 'doppelter Umschlag',
    how: 'Den Faden zweimal um die rechte Nadel legen. Zwei Maschen mehr, mit einem großen Loch.',
  },
  kfb: {
    name: 'rechts verdoppeln',
    how: 'Die Masche rechts stricken und auf der linken Nadel lassen, ihr hinteres Glied noch einmal rechts stricken, gleiten lassen. Eine Masche mehr, mit einem kleinen Querstrich.',
  },
  pfb: {
    name: 'links verdoppeln',
    how: 'Die Masche links stricken und auf der linken Nadel lassen, ihr hinteres Glied noch einmal links stricken, gleiten lassen. Eine Masche mehr.',
  },
  kfbf: {
    name: 'drei aus einer',
    how: 'Die Masche vorn, hinten und wieder vorn rechts stricken, dann gleiten lassen. Zwei Maschen mehr.',
  },
  'k1 p1': {
    name: 'rechts und links aus einer',
    how: 'Die Masche rechts stricken, auf der Nadel lassen, den Faden nach vorn holen und sie auch links stricken. Eine Masche mehr.',
  },
  'k1 p1 k1': {
    name: 'rechts, links, rechts aus einer',
    how: 'Dieselbe Masche rechts, links und rechts stricken, dann gleiten lassen. Zwei Maschen mehr.',
  },
  'p1 k1 p1': {
    name: 'links, rechts, links aus einer',
    how: 'Dieselbe Masche links, rechts und links stricken, dann gleiten lassen. Zwei Maschen mehr.',
  },
  'k1 p1 k1 p1': {
    name: 'vier aus einer',
    how: 'Dieselbe Masche rechts, links, rechts und links stricken, dann gleiten lassen. Drei Maschen mehr.',
  },
  'k1 p1 k1 p1 k1': {
    name: 'fünf aus einer',
    how: 'Dieselbe Masche rechts, links, rechts, links und rechts stricken, dann gleiten lassen. Vier Maschen mehr.',
  },
  'k1 yo k1': {
    name: 'rechts, Umschlag, rechts aus einer',
    how: 'Die Masche rechts stricken, behalten, einen Umschlag machen, sie noch einmal rechts stricken. Zwei Maschen mehr.',
  },
  'k1 yo k1 yo k1': {
    name: 'fünf aus einer mit Umschlägen',
    how: 'Dreimal rechts in dieselbe Masche, mit je einem Umschlag dazwischen, dann gleiten lassen. Vier Maschen mehr.',
  },
  inc: {
    name: '1 zunehmen',
    how: 'Eine Masche zunehmen, wie es hier am besten gefällt; eine Masche zu verdoppeln genügt.',
  },
  'inc 2': { name: '2 zunehmen', how: incInto('Dreimal') },
  'inc 3': { name: '3 zunehmen', how: incInto('Viermal') },
  'inc 4': { name: '4 zunehmen', how: incInto('Fünfmal') },
  bo: {
    name: 'abketten',
    how: 'Zwei Maschen stricken, die erste über die zweite ziehen; eine weitere stricken, wieder überziehen. Es braucht eine Masche mehr, als abgekettet werden; sie bleibt auf der rechten Nadel und zählt als erste der folgenden.',
  },
  co: {
    name: 'anschlagen',
    how: 'Neue Maschen auf die arbeitende Nadel nehmen, als Schlingen oder aus der letzten herausgestrickt, am Anfang oder am Ende der Reihe.',
  },
  pu: {
    name: 'auffassen und stricken',
    how: 'Rechte Seite vorn: durch den Rand stechen, den Faden durchholen, die Schlinge behalten. Gleichmäßig den Rand entlang.',
  },
  hold: {
    name: 'stilllegen',
    how: 'Die Maschen ungestrickt auf einen Faden oder einen Maschenraffer nehmen; dort ruhen sie, bis sie gebraucht werden.',
  },
  take: {
    name: 'wieder aufnehmen',
    how: 'Die ruhenden Maschen auf eine Nadel nehmen, keine verdreht, und den Faden ansetzen.',
  },
};

/** Welche Seite des Gestricks vor ihr liegt. */
export const sides: Readonly<Record<Side, Gloss>> = {
  RS: { name: 'Hinreihe', how: 'Die rechte Seite, die beim Tragen außen ist, liegt vor dir.' },
  WS: { name: 'Rückreihe', how: 'Die linke Seite, die beim Tragen innen ist, liegt vor dir.' },
};

const sts = (n: number): string => (n === 1 ? '1 Masche' : `${n} Maschen`);

export function crossing(name: CableName, { leans, over, under, purled, open }: Crossing): Gloss {
  const called = `${over + under} Maschen nach ${leans === 'left' ? 'links' : 'rechts'} verkreuzt`;
  if (name === 'rt')
    return {
      name: called,
      how: 'Zwei Maschen rechts zusammenstricken, aber auf der linken Nadel lassen; die erste noch einmal rechts stricken; beide gleiten lassen.',
    };
  if (name === 'lt')
    return {
      name: called,
      how: 'Die zweite Masche von hinten rechts verschränkt stricken und behalten, die erste rechts stricken; beide gleiten lassen.',
    };
  const behind = purled ? 'links' : 'rechts';
  const how =
    leans === 'left'
      ? `${sts(over)} auf eine Zopfnadel vor die Arbeit legen; ${under} ${behind} stricken; die ${over} von der Zopfnadel rechts stricken.`
      : `${sts(under)} auf eine Zopfnadel hinter die Arbeit legen; ${over} rechts stricken; die ${under} von der Zopfnadel ${behind} stricken.`;
  return {
    name: called,
    how: open
      ? `${how} Eine ungerade Zahl wird auf mehr als eine Art geteilt; die eigene Anleitung sagt, wie.`
      : how,
  };
}
