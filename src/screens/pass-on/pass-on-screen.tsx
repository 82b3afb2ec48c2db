import '../../ui/screen/columns.css';
import './pass-on.css';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { copyText, saveFile, shareLink } from '../../app/device/hand-over.ts';
import type { DesignForm } from '../../app/drafts/design/form.ts';
import { readKept } from '../../app/drafts/kept/read-kept.ts';
import { asPassedOn } from '../../app/garments/as-made.ts';
import { changeGarment } from '../../app/garments/change-garment.ts';
import { linkFor, type ToPass } from '../../app/garments/passing-on.ts';
import type { Route } from '../../app/routes.ts';
import { keepFromNowOn } from '../../app/start/keep-wanted.ts';
import type { GarmentView } from '../../app/state.ts';
import type { GarmentRecord } from '../../store/records.ts';
import { Button } from '../../ui/button/button.tsx';
import { Card } from '../../ui/card/card.tsx';
import { Toggle } from '../../ui/choice/toggle.tsx';
import { TextField } from '../../ui/field/text-field.tsx';
import { LiveRegion } from '../../ui/live/live-region.tsx';
import { Shows } from '../../ui/screen/shows.tsx';
import { say } from '../../words/say.ts';
import { GarmentPage } from '../garment-page.tsx';
import { later } from '../later.tsx';
import { ToDevice } from './to-device.tsx';

/** Fetched when they are wanted first, and then kept: what draws codes, and what publishes a design. */
const Codes = later(async () => (await import('./qr-code.tsx')).Codes);
const Sizes = later(async () => (await import('./in-sizes.tsx')).InSizes);
const RowNotes = later(async () => (await import('./row-notes.tsx')).RowNotes);
const Written = later(async () => (await import('./written-card.tsx')).WrittenCard);

/** The recipe as a link, a code and a file, with the credits that travel with it. */
export default function PassOnScreen({ route }: { readonly route: Route }) {
  const [title, Page] = pageOf(route.query);
  return (
    // another page at the same address but for its query: the focus goes to its heading as on any other
    <GarmentPage key={title} route={route} title={title}>
      {(view) => <Page view={view} />}
    </GarmentPage>
  );
}

function pageOf(query: URLSearchParams) {
  if (query.has('sizes')) return [say('passOn.inSizes'), InSizes] as const;
  if (query.has('device')) return [say('passOn.toDevice'), ToDevice] as const;
  return [say('passOn.title'), PassOn] as const;
}

/** Whether a part of a page could not be fetched; what was is kept from now on, with all that publishes. */
function useAway(...parts: readonly Fetched[]): boolean {
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    void Promise.all(parts.map((part) => part.fetch())).then((fetched) => {
      const areHere = fetched.every(Boolean);
      setAway(!areHere);
      if (areHere) void keepFromNowOn('publishing').then(() => keepFromNowOn('sewing'));
    });
  }, []);
  return isAway;
}

type Fetched = Pick<typeof Written, 'fetch'>;

const Away = () => <p role="status">{say('passOn.needsNetwork')}</p>;

function InSizes({ view }: { readonly view: GarmentView }) {
  return useAway(Sizes) ? <Away /> : <Sizes view={view} />;
}

function PassOn({ view }: { readonly view: GarmentView }) {
  const [withNotes, setNotes] = useState(false);
  const [withRowNotes, setRowNotes] = useState(false);
  const [told, tell] = useState('');
  const isAway = useAway(Codes, RowNotes, Written);
  const garment = useMemo(() => asPassedOn(view), [view]);
  const { design } = garment;
  const [drafted, setDrafted] = useState<DesignForm>();
  // somebody's own measures go along only where she says so
  const [said, setDesign] = useState<boolean>();
  useEffect(() => {
    void readKept('designForm', design).then((read) => setDrafted(read.ok ? read.value : undefined));
  }, [design]);
  const withDesign = said ?? drafted?.person.table !== undefined;
  const link = useLink(garment, { withNotes, withDesign, withRowNotes });
  const keep = (field: 'credits' | 'licence') => (typed: string) =>
    void changeGarment(garment.id, (now) => ({ ...now, [field]: typed }));
  const copy = async () => tell(say((await copyText(link ?? '')) ? 'passOn.copied' : 'passOn.copyFailed'));
  const share = async () => {
    if (link !== undefined && !(await shareLink(garment.name, link))) await copy();
  };
  const save = () => {
    if (link === undefined) return;
    saveFile(`${garment.name}.ridgeline.txt`, link);
    tell(say('passOn.fileSaved'));
  };
  return (
    <div class="pass-on pass-on-whole columns">
      <Shows what="columns" />
      <p>{say('passOn.what')}</p>
      <Card>
        <TextField
          label={say('passOn.credits')}
          hint={say('passOn.creditsHint')}
          value={garment.credits ?? ''}
          onChange={keep('credits')}
        />
        <TextField
          label={say('passOn.licence')}
          hint={say('passOn.licenceHint')}
          maxLength={200}
          value={garment.licence ?? ''}
          onChange={keep('licence')}
        />
        {drafted && (
          <Toggle
            label={say('passOn.withDesign')}
            hint={say('passOn.withDesignHint')}
            on={withDesign}
            onChange={setDesign}
          />
        )}
        {garment.notes && <Toggle label={say('passOn.withNotes')} on={withNotes} onChange={setNotes} />}
        {garment.rowNotes && garment.rowNotes.length > 0 && (
          <Toggle label={say('passOn.withRowNotes')} on={withRowNotes} onChange={setRowNotes} />
        )}
      </Card>
      <Card label={say('passOn.link')}>
        <h2>{say('passOn.link')}</h2>
        <p>{link && say('passOn.linkHint', { length: link.length })}</p>
        <div class="pass-on-keys">
          <Button kind="main" icon="share" onPress={() => void share()}>
            {say('passOn.share')}
          </Button>
          <Button onPress={() => void copy()}>{say('passOn.copy')}</Button>
        </div>
        <LiveRegion text={told} />
        {told !== '' && <p>{told}</p>}
      </Card>
      <Card label={say('passOn.code')}>
        <h2>{say('passOn.code')}</h2>
        {link && <Codes link={link} label={say('passOn.codeLabel', { garment: garment.name })} />}
      </Card>
      <Written garment={garment} tell={tell} />
      {isAway && <Away />}
      <RowNotes view={view} />
      <Card label={say('passOn.file')}>
        <h2>{say('passOn.file')}</h2>
        <Button icon="download" onPress={save}>
          {say('passOn.saveFile')}
        </Button>
      </Card>
    </div>
  );
}

/**
 * Her link, made before it is asked for: a browser hands on only what is there when she taps. What she typed since may
 * be missing in it for a moment; notes that she took back are never in it.
 */
function useLink(garment: GarmentRecord, to: ToPass): string | undefined {
  const wish = JSON.stringify(to);
  const [made, setMade] = useState<{ readonly link: string; readonly wish: string }>();
  useEffect(() => {
    let isWanted = true;
    void linkFor(garment, to).then((link) => isWanted && setMade({ link, wish }));
    return () => {
      isWanted = false;
    };
  }, [garment, wish]);
  return made?.wish === wish ? made.link : undefined;
}
