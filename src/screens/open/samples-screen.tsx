import '../workbasket/workbasket.css';
import { hrefTo } from '../../app/routes.ts';
import { Card } from '../../ui/card/card.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Screen } from '../../ui/screen/screen.tsx';
import { say } from '../../words/say.ts';
import { useArrival } from '../arrival.ts';

/** More garments to look at and to knit from: each opens at its first row. */
export default function SamplesScreen() {
  const title = say('workbasket.samples');
  useArrival(title);
  const samples = [
    { which: 'sample', name: say('workbasket.sampleName'), help: say('workbasket.sampleHelp') },
    { which: 'cardigan', name: say('workbasket.cardiganName'), help: say('workbasket.cardiganHelp') },
    { which: 'baby', name: say('workbasket.babyName'), help: say('workbasket.babyHelp') },
  ];
  return (
    <Screen title={title} back={{ href: hrefTo('workbasket'), label: say('workbasket.toWorkbasket') }}>
      <ul role="list" class="ways">
        {samples.map(({ which, name, help }) => (
          <li key={which}>
            <Card href={hrefTo('sampleOf', { which })}>
              <p>
                <strong>{name}</strong>
              </p>
              <p class="quiet">{help}</p>
            </Card>
          </li>
        ))}
      </ul>
      <Notice kind="warning">{say('workbasket.cords')}</Notice>
    </Screen>
  );
}
