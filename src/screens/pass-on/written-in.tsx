import { useEffect, useState } from 'preact/hooks';
import type { WrittenWords } from '../../knit/written/written-words.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { fetchWritten, type WrittenIn as In, writtenAsSpoken, writtenChoices } from '../../words/written.ts';

/** The language that a pattern is written in, hers until she chooses that of her followers; and its words when they are there. */
export function useWrittenIn() {
  const [chosen, choose] = useState<In>();
  const [words, setWords] = useState<WrittenWords>();
  const [isAway, setAway] = useState(false);
  const language = chosen ?? writtenAsSpoken(speech.value);
  useEffect(() => {
    let isWanted = true;
    const come = (fetched: WrittenWords | undefined) => {
      if (!isWanted) return;
      setAway(fetched === undefined);
      if (fetched) setWords(fetched);
    };
    void fetchWritten(language).then(come, () => come(undefined));
    return () => {
      isWanted = false;
    };
  }, [language]);
  return { words, language, choose, isAway };
}

type Props = Pick<ReturnType<typeof useWrittenIn>, 'language' | 'choose' | 'isAway'>;

export const WrittenIn = ({ language, choose, isAway }: Props) => (
  <>
    <SelectField
      label={say('passOn.writtenIn')}
      value={language}
      options={writtenChoices}
      onChange={choose}
    />
    {isAway && <p role="alert">{say('passOn.writtenAway')}</p>}
  </>
);
