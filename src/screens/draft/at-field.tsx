import { design, form, overrule, setOwn } from '../../app/drafts/design/designer.ts';
import { opensMore } from '../../knit/garment/kinds/neck-openings.ts';
import { possibleOpenings } from '../../knit/garment/which-opening.ts';
import { Button } from '../../ui/button/button.tsx';
import { NumberField } from '../../ui/field/number-field.tsx';
import { Icon } from '../../ui/icon/icon.tsx';
import { saysFault } from '../../words/fault.ts';
import { lengthToType, lengthTyped, lengthUnit, saysTyped } from '../../words/measures.ts';
import { say } from '../../words/say.ts';
import { speech } from '../../words/settings.ts';
import { saysName } from './says-name.ts';
import { cautionsAt, faultAt } from './troubles.ts';

interface LengthFieldProps {
  readonly label: string;
  readonly hint?: string | undefined;
  /** mm; NaN where the field is empty */
  readonly mm: number;
  /** the field of the design that a fault or caution names */
  readonly path: string;
  readonly signed?: boolean | undefined;
  /** without stepping buttons */
  readonly bare?: boolean | undefined;
  /** not typed by her */
  readonly isWorkedOut?: boolean | undefined;
  readonly onChange: (mm: number | null) => void;
}

/** A length in her unit, with what is wrong at it and what to look at below it. */
export function LengthField({
  label,
  hint,
  mm,
  path,
  signed = false,
  bare = false,
  isWorkedOut,
  onChange,
}: LengthFieldProps) {
  const wrong = faultAt(path);
  const step = speech.value.units === 'in' ? 0.25 : 0.5;
  return (
    <div class="draft-field" data-field={path}>
      <NumberField
        label={label}
        hint={hint}
        error={wrong && saysFault(wrong)}
        value={Number.isFinite(mm) ? lengthToType(mm, isWorkedOut) : undefined}
        unit={lengthUnit()}
        says={saysTyped}
        decimals
        signed={signed}
        bare={bare}
        step={step}
        {...(signed ? {} : { min: 0 })}
        onChange={(typed) => onChange(typed === undefined ? null : lengthTyped(typed))}
      />
      <Cautions path={path} />
    </div>
  );
}

/** A length of the design itself. */
export function DesignLength(props: Omit<LengthFieldProps, 'onChange' | 'isWorkedOut'>) {
  const { path } = props;
  const isWorkedOut = form.value?.own[path] === undefined;
  return <LengthField {...props} isWorkedOut={isWorkedOut} onChange={(mm) => setOwn(path, mm)} />;
}

/** A fault at a choice, which has no field of its own to say it. */
export function FaultAt({ path }: { readonly path: string }) {
  const wrong = faultAt(path);
  return (
    <>
      {wrong && (
        <p class="draft-wrong" data-field={path}>
          <Icon name="fault" size="s" />
          <span>{saysFault(wrong)}</span>
        </p>
      )}
      <Cautions path={path} />
    </>
  );
}

/** Every way to open the neck that the garment can have, one tap each. */
function Openings() {
  const wished = design.value;
  if (!wished) return null;
  return (
    <>
      {possibleOpenings(wished)
        .filter((opening) => opensMore(opening) && opening !== wished.neck.opening)
        .map((opening) => (
          <Button kind="quiet" key={opening} onPress={() => setOwn('neck.opening', opening)}>
            {say('draft.openNeck', { how: saysName(`opening ${opening}`) })}
          </Button>
        ))}
    </>
  );
}

/** What to look at here. She may overrule it; then it stays in sight, quieter. */
function Cautions({ path }: { readonly path: string }) {
  return (
    <>
      {cautionsAt(path).map((caution) => (
        <div class={`draft-caution${caution.overruled ? ' draft-overruled' : ''}`} key={caution.code}>
          <p>
            <Icon name={caution.overruled ? 'check' : 'warning'} size="s" />
            <span>
              {saysFault(caution)} {caution.overruled && say('draft.keptSo')}
            </span>
          </p>
          {caution.code === 'head does not pass' && !caution.overruled && <Openings />}
          <Button kind="quiet" onPress={() => overrule(caution.code, !caution.overruled)}>
            {say(caution.overruled ? 'draft.askAgain' : 'draft.keepSo')}
          </Button>
        </div>
      ))}
    </>
  );
}
