import { useMemo } from 'preact/hooks';
import { encode } from 'uqr';

/** A QR code drawn as one path, dark on light whatever the theme: cameras read no other. Undefined where the text is too long. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const code = useMemo(() => codeOf(text), [text]);
  if (code === undefined) return null;
  return (
    <svg
      class="qr"
      role="img"
      aria-label={label}
      viewBox={`0 0 ${code.size} ${code.size}`}
      shape-rendering="crispEdges"
    >
      <rect width={code.size} height={code.size} fill="#ffffff" />
      <path d={code.path} fill="#000000" />
    </svg>
  );
}

/** Most characters that a QR code of the lowest correction level holds as bytes (ISO/IEC 18004, version 40-L). */
export const LONGEST_CODE = 2953;

function codeOf(text: string): { size: number; path: string } | undefined {
  if (text.length > LONGEST_CODE) return undefined;
  const { data, size } = encode(text, { ecc: 'L', border: 4 });
  const path = data
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return { size, path };
}
