/** Letters on a page of a PDF: points from its left and bottom edge. */
export interface Printed {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size?: number;
}

/**
 * A PDF by the rules of ISO 32000, as small as one can be: A4 pages in one of the fonts that every reader has. `locked`:
 * it asks for a password.
 */
export function madePdf(pages: readonly (readonly Printed[])[], locked = false): ArrayBuffer {
  const objects: string[] = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    `<< /Type /Pages /Kids [${pages.map((_, at) => `${4 + 2 * at} 0 R`).join(' ')}] /Count ${pages.length} >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Courier /Encoding /WinAnsiEncoding >>',
  ];
  pages.forEach((page, at) => {
    const drawn = page.map(drawing).join('\n');
    objects.push(
      `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Resources << /Font << /F1 3 0 R >> >> /Contents ${5 + 2 * at} 0 R >>`,
      `<< /Length ${drawn.length} >>\nstream\n${drawn}\nendstream`,
    );
  });
  const some = `<${'5a'.repeat(32)}>`;
  const lock = `/Encrypt << /Filter /Standard /V 1 /R 2 /O ${some} /U ${some} /P -4 >> /ID [<01> <01>]`;
  return fileOf(objects, locked ? lock : '');
}

const drawing = ({ text, x, y, size = 10 }: Printed): string =>
  `BT /F1 ${size} Tf 1 0 0 1 ${x} ${y} Tm (${text.replace(/[()\\]/g, '\\$&')}) Tj ET`;

/** The objects, and behind them the table of where each begins. */
function fileOf(objects: readonly string[], more: string): ArrayBuffer {
  let file = '%PDF-1.4\n';
  const starts = objects.map((object, at) => {
    const start = file.length;
    file += `${at + 1} 0 obj\n${object}\nendobj\n`;
    return String(start).padStart(10, '0');
  });
  const table = file.length;
  file += `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${starts.map((at) => `${at} 00000 n \n`).join('')}`;
  file += `trailer\n<< /Size ${objects.length + 1} /Root 1 0 R ${more} >>\nstartxref\n${table}\n%%EOF\n`;
  return Uint8Array.from(file, (letter) => letter.charCodeAt(0)).buffer;
}

/** Lines one below the other from a height down, 12 points apart. */
export const column = (x: number, top: number, lines: readonly string[]): Printed[] =>
  lines.flatMap((text, at) => (text === '' ? [] : [{ text, x, y: top - 12 * at }]));
