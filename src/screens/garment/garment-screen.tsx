import './garment.css';
import { useEffect, useState } from 'preact/hooks';
import { openGarment } from '../../app/garments/open-garments.ts';
import { againFor } from '../../app/garments/passing-on.ts';
import { nextOf } from '../../app/in-hand/next-place.ts';
import { goTo } from '../../app/navigate.ts';
import { hrefTo, type Route } from '../../app/routes.ts';
import { type GarmentView, garmentShown, readFault } from '../../app/state.ts';
import { Button } from '../../ui/button/button.tsx';
import { Group } from '../../ui/group/group.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { ProgressBar } from '../../ui/progress/progress-bar.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { saysFault } from '../../words/fault.ts';
import { saysNumber } from '../../words/numbers.ts';
import { loadWords, say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';
import { Guesses } from '../guesses.tsx';
import { later } from '../later.tsx';
import { hrefToMake } from '../links.ts';
import { saysMake } from '../says-make.ts';
import { useFresh } from '../use-fresh.ts';
import { AskGauge } from './ask-gauge.tsx';
import { DeleteGarment } from './delete-garment.tsx';
import { Notes } from './notes.tsx';
import { PieceSection } from './piece-section.tsx';
import { ShouldersAnew } from './shoulders-anew.tsx';
import { Table } from './table.tsx';
import { YarnSection } from './yarn-section.tsx';

/** Only a finished garment needs it, and all that is known of making up. */
const AllDone = later(
  async () => (await Promise.all([import('./all-done.tsx'), loadWords('partEnd')]))[0].default,
);

/** What it measures is reckoned by all that is known of making up. */
const FinishedSize = later(
  async () => (await Promise.all([import('./finished-size.tsx'), loadWords('makingUp')]))[0].FinishedSize,
);

/** Only a garment that was drafted has a design, and it asks for all that is known of sizes. */
const AnotherSize = later(
  async () =>
    (await Promise.all([import('./another-size.tsx'), loadWords('record', 'draft')]))[0].AnotherSize,
);

/** Any other goes by its numbers or its text, of which the editor and the reader know. */
const AnotherLike = later(
  async () => (await Promise.all([import('./another-like.tsx'), loadWords('record')]))[0].AnotherLike,
);

const up = () => ({ href: hrefTo('workbasket'), label: say('garment.toWorkbasket') });

export default function GarmentScreen({ route }: { readonly route: Route }) {
  const id = route.at.garment ?? '';
  useFresh(() => openGarment(id), { garment: id });
  const view = garmentShown.value;
  const fault = readFault.value;
  if (view === null || (fault !== undefined && view === undefined))
    return <None sentence={fault && saysFault(fault)} />;
  return view?.garment.id === id ? <Whole view={view} /> : <div class="garment-waits" />;
}

function Whole({ view }: { readonly view: GarmentView }) {
  const { garment } = view;
  useArrival(garment.name);
  const [size, setSize] = useState('');
  useEffect(() => void FinishedSize.fetch(), []);
  return (
    <Screen title={garment.name} back={up()} foot={<GoOn view={view} />}>
      <Progress view={view} />
      <AskGauge garment={garment} />
      <ShouldersAnew view={view} />
      <Table pieces={view.pieces} />
      <Guesses pieces={view.pieces.map(({ recipe }) => recipe)} />
      <div class="garment-lines">
        <Group title={say('garment.yarn')} says={garment.yarns?.map(({ name }) => name).join(', ')}>
          <YarnSection garment={garment} />
        </Group>
        <SizeLine says={size} />
        <Button wide icon="onward" href={hrefTo('makingUp', { garment: garment.id })}>
          {say('garment.toMakingUp')}
        </Button>
        {garment.notes && (
          <p class="garment-notes">
            <strong>{say('garment.notes')}</strong>
            {`\n${garment.notes}`}
          </p>
        )}
        <Group title={say('garment.more')}>
          {/* what she opens it for, before what is read there */}
          <Rare view={view} />
          <Notes key={garment.id} garment={garment.id} notes={garment.notes ?? ''} />
          <FinishedSize view={view} onSays={setSize} />
          {view.pieces.map((piece) => (
            <PieceSection key={piece.id} piece={piece} />
          ))}
        </Group>
      </div>
    </Screen>
  );
}

/** How large it comes out, in a line; what else is measured of it lies with what is seldom asked for. */
function SizeLine({ says }: { readonly says: string }) {
  return (
    <p class="garment-size">
      {say('garment.finishedSize')} <span class="garment-small">{says}</span>
    </p>
  );
}

/** What she came for: on with the piece in hand, then with the next; when all is knitted, to sew it up. */
function GoOn({ view }: { readonly view: GarmentView }) {
  const place = nextOf(view);
  const piece = view.pieces.find(({ id }) => id === place?.piece);
  const make = piece?.makes.find((one) => one.make === place?.make);
  if (!place || !piece || !make)
    return (
      <Button kind="main" wide icon="onward" href={hrefTo('makingUp', { garment: view.garment.id })}>
        {say('garment.toMakingUp')}
      </Button>
    );
  const what = saysMake(piece.name, make.parts[place.part]?.name ?? '', make.make, piece.recipe);
  return (
    <Button kind="main" wide icon="needle" href={hrefToMake(place.id)}>
      {place.rows === 0 ? say('garment.begin', { what }) : say('garment.goOn', { what, row: place.rows + 1 })}
    </Button>
  );
}

/** What is seldom asked for. */
function Rare({ view }: { readonly view: GarmentView }) {
  const { garment } = view;
  const isDrafted = garment.design !== undefined && garment.texts === undefined;
  useEffect(() => {
    void (isDrafted ? AnotherSize : AnotherLike).fetch();
  }, [isDrafted]);
  return (
    <>
      {(garment.credits || garment.licence) && (
        <p class="garment-small">
          {garment.credits}
          {garment.licence && ` · ${say('garment.licence', { licence: garment.licence })}`}
        </p>
      )}
      <div class="garment-keys">
        <Button icon="edit" href={hrefTo('editGarment', { garment: garment.id })}>
          {say('garment.edit')}
        </Button>
        <Button icon="plus" onPress={() => void againFor(view).then(goTo)}>
          {say('garment.again')}
        </Button>
        {isDrafted ? <AnotherSize garment={garment} /> : <AnotherLike view={view} />}
        <Button icon="history" href={hrefTo('record', { garment: garment.id })}>
          {say('garment.toRecord')}
        </Button>
        <Button icon="share" href={hrefTo('passOn', { garment: garment.id })}>
          {say('garment.toPassOn')}
        </Button>
        <Button icon="share" href={`${hrefTo('passOn', { garment: garment.id })}?device`}>
          {say('garment.toDevice')}
        </Button>
        <Button icon="print" href={hrefTo('print', { garment: garment.id })}>
          {say('garment.print')}
        </Button>
        <DeleteGarment view={view} />
      </div>
    </>
  );
}

function Progress({ view }: { readonly view: GarmentView }) {
  const places = view.pieces.flatMap((piece) => piece.makes.flatMap((make) => make.places));
  const rows = places.reduce((sum, place) => sum + place.rows, 0);
  const total = places.reduce((sum, place) => sum + place.total, 0);
  const isDone = total > 0 && rows >= total;
  useEffect(() => {
    if (isDone) void AllDone.fetch();
  }, [isDone]);
  if (isDone) return <AllDone view={view} />;
  const percent = saysNumber(total === 0 ? 0 : rows / total, { percent: true, digits: 0 });
  const text = say('garment.progress', { percent });
  return (
    <div class="garment-progress">
      <ProgressBar label={view.garment.name} valueText={text} value={rows} max={total} />
      <p class="garment-small">{text}</p>
    </div>
  );
}

function None({ sentence }: { readonly sentence: string | undefined }) {
  useArrival(say('garment.none'));
  return (
    <Screen title={say('garment.none')} back={up()}>
      <Notice kind={sentence ? 'fault' : 'note'} live>
        {sentence ?? say('garment.noneHelp')}
      </Notice>
      <Button kind="main" href={hrefTo('workbasket')}>
        {say('garment.toWorkbasket')}
      </Button>
    </Screen>
  );
}
