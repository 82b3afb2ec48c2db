import { strFromU8, unzipSync } from 'fflate';
import { fault, ok, type Result, refuse } from '../../../../knit/fault.ts';

const TEXT = 'word/document.xml';

/** Larger than the text of any pattern, unpacked: bytes. */
const LARGEST = 20_000_000;

/**
 * The text of a word processor's file (ECMA-376, .docx): a zip with the text as XML, paragraph by paragraph; the cells of
 * a table's row stand in one line. Faults: 'document damaged'.
 */
export function textOfDocx(data: ArrayBuffer): Result<string> {
  try {
    const files = unzipSync(new Uint8Array(data), {
      filter: ({ name, originalSize }) => name === TEXT && originalSize <= LARGEST,
    });
    const xml = files[TEXT];
    if (xml === undefined) return refuse(fault('document damaged'));
    const page = new DOMParser().parseFromString(strFromU8(xml), 'application/xml');
    if (page.querySelector('parsererror')) return refuse(fault('document damaged'));
    const [body] = page.getElementsByTagName('w:body');
    return ok(
      body
        ? linesIn(body)
            .join('\n')
            .replace(/\n{3,}/g, '\n\n')
            .trim()
        : '',
    );
  } catch {
    return refuse(fault('document damaged'));
  }
}

function linesIn(parent: Element): string[] {
  return [...parent.children].flatMap((child) => {
    switch (child.tagName) {
      case 'w:p':
        return [numbered(child) + lettersIn(child)];
      case 'w:tr':
        return [
          [...child.children]
            .map((cell) => linesIn(cell).join(' ').trim())
            .join(' ')
            .trim(),
        ];
      // what was taken out, and what shows where it was written from
      case 'w:del':
      case 'w:sectPr':
        return [];
      default:
        return linesIn(child);
    }
  });
}

/** An entry of a list says so by its kind, not by its letters. */
const numbered = (paragraph: Element): string =>
  paragraph.getElementsByTagName('w:numPr').length > 0 ? '• ' : '';

function lettersIn(element: Element): string {
  return [...element.children]
    .map((child) => {
      switch (child.tagName) {
        case 'w:t':
          return child.textContent ?? '';
        case 'w:tab':
          return ' ';
        case 'w:br':
        case 'w:cr':
          return '\n';
        case 'w:noBreakHyphen':
          return '-';
        case 'w:del':
        case 'w:pPr':
        case 'w:rPr':
          return '';
        default:
          return lettersIn(child);
      }
    })
    .join('');
}
