'use client';

import { formatMass, massEcho } from '@/lib/growing/format-quantity';
import { errorOf, type FieldContext, textOf } from '../form/field-context';
import { describedBy, fieldId } from '../form/field-id';
import { FieldFrame } from '../form/fields/field-frame';
import { massAt } from './check-harvest';
import { fillPlaces } from './fill-places';
import type { QuickProps } from './quick-props';
import { readNetMass, settledMass, type TypedMass } from './read-net-mass';
import type { QuickEntryState } from './use-quick-entry';

type Props = {
  readonly entry: QuickEntryState;
  readonly props: QuickProps;
  readonly context: FieldContext;
  readonly tare: TypedMass;
};

/** What was understood, large and in both units; a mass with two readings becomes a choice of two buttons. */
function MassEcho({ entry, props, tare }: Omit<Props, 'context'>) {
  const { words, snapshot } = props;
  const { locale } = words.form;
  const unit = snapshot.person.massUnit;
  const fresh = massAt(entry.typed, 'fresh');
  const mass = readNetMass(fresh, tare, locale);
  if (mass.kind === 'two-readings') {
    const settle = (grams: number) => {
      const box = document.getElementById(fieldId('fresh'));
      if (!(box instanceof HTMLInputElement)) return;
      box.value = settledMass(grams, fresh.unit === 'lb' ? 'lb' : 'kg', locale).text;
      entry.refresh();
      box.focus();
    };
    return (
      <div className="readings">
        <p role="status">{words.harvest.twoReadings}</p>
        {mass.readings.slice(0, 2).map((grams) => (
          <button key={grams} type="button" className="button button-plain" onClick={() => settle(grams)}>
            {formatMass(grams, unit, locale)}
          </button>
        ))}
      </div>
    );
  }
  let text = mass.kind === 'unreadable' ? words.form.notUnderstood : '';
  if (mass.kind === 'net') {
    const { own, twin } = massEcho(mass.net, unit, locale);
    const crate = { gross: formatMass(mass.gross, unit, locale), tare: formatMass(mass.tare, unit, locale) };
    text =
      mass.tare === 0
        ? fillPlaces(words.form.understood, { first: own, second: twin })
        : `${fillPlaces(words.harvest.sum, { ...crate, net: own })}, ${fillPlaces(words.harvest.twin, { twin })}`;
  }
  return (
    <output htmlFor={fieldId('fresh')} className="echo">
      {text}
    </output>
  );
}

/** The box for the mass on the scale, its unit one tap away. A scale may type digits, unit and Enter into it. */
export function MassBox({ entry, props, context, tare }: Props) {
  const { words, snapshot } = props;
  const own = textOf(context, 'fresh__unit') || snapshot.person.massUnit;
  const error = errorOf(context, 'fresh');
  return (
    <div>
      <FieldFrame spec={{ name: 'fresh', label: words.fields.fresh }} context={context}>
        <span className="input-row mass-row">
          <input
            id={fieldId('fresh')}
            name="fresh"
            type="text"
            inputMode="decimal"
            enterKeyHint="done"
            className="input input-mass"
            defaultValue={textOf(context, 'fresh')}
            autoComplete="off"
            aria-invalid={error === undefined ? undefined : true}
            aria-describedby={describedBy('fresh', { hint: false, error: error !== undefined })}
          />
          <span className="unit-switch" role="radiogroup" aria-label={words.form.unit}>
            {(['kg', 'lb'] as const).map((unit) => (
              <label key={unit}>
                <input type="radio" name="fresh__unit" value={unit} defaultChecked={unit === own} />
                {unit}
              </label>
            ))}
          </span>
        </span>
      </FieldFrame>
      <MassEcho entry={entry} props={props} tare={tare} />
    </div>
  );
}
