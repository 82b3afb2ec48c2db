import { useMemo, useState } from 'preact/hooks';
import { encode } from 'uqr';
import { codesOf } from '../../app/garments/passing-on.ts';
import { Button } from '../../ui/button/button.tsx';
import { say } from '../../words/say.ts';

interface CodesProps {
  readonly link: string;
  readonly label: string;
}

/** The link as a code; as several, one after the other, where one would be too dense for a camera. */
export function Codes({ link, label }: CodesProps) {
  const [at, setAt] = useState(0);
  const parts = useMemo(() => codesOf(link), [link]);
  if (parts === undefined) return <p>{say('passOn.codeTooLong')}</p>;
  const n = Math.min(at, parts.length - 1);
  const place = say('passOn.codeOf', { n: n + 1, of: parts.length });
  return (
    <>
      {parts.length > 1 && <p>{say('passOn.codesHint')}</p>}
      <QrCode text={parts[n] ?? ''} label={parts.length > 1 ? `${label}, ${place}` : label} />
      {parts.length > 1 && (
        <div class="pass-on-keys">
          <strong aria-live="polite">{place}</strong>
          <Button icon="onward" onPress={() => setAt((n + 1) % parts.length)}>
            {say('passOn.nextCode')}
          </Button>
        </div>
      )}
    </>
  );
}

/** A QR code drawn as one path, dark on light whatever the theme: cameras read no other. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const code = useMemo(() => codeOf(text), [text]);
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

function codeOf(text: string): { size: number; path: string } {
  const { data, size } = encode(text, { ecc: 'L', border: 4 });
  const path = data
    .flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])))
    .join('');
  return { size, path };
}
