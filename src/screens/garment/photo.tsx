import { useEffect, useRef, useState } from 'preact/hooks';
import { keepPhoto, openPhoto, removePhoto } from '../../app/garments/photo.ts';
import type { GarmentRecord, PhotoRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { say } from '../../words/say.ts';

/** Her picture of the yarn: made small, kept on this phone. */
export function Photo({ garment }: { readonly garment: GarmentRecord }) {
  const [photo, setPhoto] = useState<PhotoRecord>();
  const [failed, setFailed] = useState(false);
  // of another window too: the garment is read anew when one comes or goes
  useEffect(() => void openPhoto(garment.id).then(setPhoto), [garment]);
  const keep = async (file: File) => {
    const kept = await keepPhoto(garment.id, file);
    setFailed(kept === undefined);
    if (kept) setPhoto(kept);
  };
  const remove = async (id: string) => {
    if (await removePhoto(id)) setPhoto(undefined);
  };
  return (
    <div class="photo">
      <h3>{say('garment.photo')}</h3>
      {photo && <Picture photo={photo} alt={say('garment.photoAlt', { garment: garment.name })} />}
      <p class="garment-small">{say('garment.photoHelp')}</p>
      {failed && (
        <Notice kind="fault" live>
          {say('garment.photoFailed')}
        </Notice>
      )}
      <div class="photo-keys">
        <Picker
          label={say(photo ? 'garment.changePhoto' : 'garment.addPhoto')}
          onPick={(file) => void keep(file)}
        />
        {photo && (
          <Button icon="trash" onPress={() => void remove(photo.id)}>
            {say('garment.removePhoto')}
          </Button>
        )}
      </div>
    </div>
  );
}

function Picture({ photo, alt }: { readonly photo: PhotoRecord; readonly alt: string }) {
  const [src, setSrc] = useState<string>();
  useEffect(() => {
    const url = URL.createObjectURL(photo.image);
    setSrc(url);
    return () => URL.revokeObjectURL(url);
  }, [photo]);
  return src === undefined ? null : <img class="photo-picture" src={src} alt={alt} />;
}

/** The platform's own way to a picture: camera or album. */
function Picker({ label, onPick }: { readonly label: string; readonly onPick: (file: File) => void }) {
  const input = useRef<HTMLInputElement>(null);
  const picked = () => {
    const file = input.current?.files?.[0];
    if (file) onPick(file);
    if (input.current) input.current.value = '';
  };
  return (
    <>
      <input ref={input} type="file" accept="image/*" aria-label={label} hidden onChange={picked} />
      <Button icon="photo" onPress={() => input.current?.click()}>
        {label}
      </Button>
    </>
  );
}
