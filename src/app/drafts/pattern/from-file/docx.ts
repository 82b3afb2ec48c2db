import { strFromU8, unzipSync } from 'fflate';
import { fault, ok, type Result, refuse } from '../../../../knit/fault.ts';

const TEXT = 'word/document.xml';

/** Larger than the text of any pattern, unpacked: bytes. */
const LARGEST = 20_000_000;

/**
 * The text of a word processor's file (ECMA-376, .docx): a zip with the text as XML, paragraph by paragraph; the cells of
 * a table's row stand in one line. The policy for scripts lets no text be made a document here, so the elements that
 * hold the letters are looked for in it as it stands. Faults: 'document damaged'.
 */
export function textOfDocx(data: ArrayBuffer): Result<string> {
  try {
    const files = unzipSync(new Uint8Array(data), {
      filter: ({ name, originalSize }) => name === TEXT && originalSize <= LARGEST,
    });
    const xml = files[TEXT];
    return xml === undefined ? refuse(fault('document damaged')) : ok(lettersOf(strFromU8(xml)));
  } catch {
    return refuse(fault('document damaged'));
  }
}

/** An element's beginning or end, with its name; or what stands between two. */
const PIECE = /<(\/?)([\w:]+)[^>]*?(\/?)>|[^<]+/g;

/** What an element that holds no letters stands for. */
const STANDS_FOR: Readonly<Record<string, string>> = {
  'w:tab': ' ',
  'w:br': '\n',
  'w:cr': '\n',
  'w:noBreakHyphen': '-',
  // an entry of a list says so by its kind, not by its letters
  'w:numPr': '• ',
};

function lettersOf(xml: string): string {
  let text = '';
  let inLetters = false;
  let cells = 0;
  for (const [piece, end, name, empty] of xml.matchAll(PIECE)) {
    if (name === undefined) {
      if (inLetters) text += plain(piece);
      continue;
    }
    // what was taken out is w:delText
    if (name === 'w:t') inLetters = end === '' && empty === '';
    else if (name === 'w:tr') cells += end === '' ? 1 : -1;
    else if (end === '') text += STANDS_FOR[name] ?? '';
    if (end !== '' && name === 'w:tr') text += '\n';
    if (name === 'w:p' && (end !== '' || empty !== '')) text += cells > 0 ? ' ' : '\n';
  }
  return text
    .replace(/[ \t]+/g, ' ')
    .replace(/ ?\n ?/g, '\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();
}

/** The marks that XML writes otherwise (XML 1.0, 4.6), and letters by their number. */
const NAMED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

const plain = (text: string): string =>
  text.replace(/&(?:#(x?)([\da-f]+)|(\w+));/gi, (whole, hex: string, number: string, name: string) =>
    name === undefined
      ? letter(Number.parseInt(number, hex === '' ? 10 : 16), whole)
      : (NAMED[name] ?? whole),
  );

const letter = (code: number, whole: string): string =>
  code <= 0x10ffff ? String.fromCodePoint(code) : whole;
