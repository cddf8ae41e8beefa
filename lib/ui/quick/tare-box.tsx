'use client';

import { decimalSignOf, formatMass } from '@/lib/growing/format-quantity';
import { parseMassEntry } from '@/lib/growing/mass-entry';
import { errorOf, type FieldContext } from '../form/field-context';
import { describedBy, fieldId } from '../form/field-id';
import { FieldFrame } from '../form/fields/field-frame';
import { fillPlaces } from './fill-places';
import type { QuickProps } from './quick-props';
import type { TypedMass } from './read-net-mass';

type Props = {
  readonly props: QuickProps;
  readonly context: FieldContext;
  readonly tare: TypedMass;
  readonly change: (tare: TypedMass) => void;
};

/** The crate or bucket on the scale, folded away; the one subtracted last on this phone is taken again and said so. */
export function TareBox({ props, context, tare, change }: Props) {
  const { words, snapshot } = props;
  const unit = tare.unit === 'lb' ? 'lb' : 'kg';
  const { locale } = words.form;
  const entry = parseMassEntry(tare.text, unit, decimalSignOf(locale));
  const error = errorOf(context, 'tare');
  return (
    <details className="tare" open={error === undefined ? undefined : true}>
      <summary>
        {entry.kind === 'mass' && entry.grams > 0
          ? fillPlaces(words.harvest.tareOn, {
              tare: formatMass(entry.grams, snapshot.person.massUnit, locale),
            })
          : words.harvest.tareOpen}
      </summary>
      <FieldFrame
        spec={{ name: 'tare', label: `${words.fields.tare} (${unit})`, hint: words.harvest.tareHint }}
        context={context}
      >
        <input
          id={fieldId('tare')}
          name="tare"
          type="text"
          inputMode="decimal"
          className="input input-number"
          value={tare.text}
          onChange={(event) => change({ text: event.target.value, unit })}
          autoComplete="off"
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy('tare', { hint: true, error: error !== undefined })}
        />
        <input type="hidden" name="tare__unit" value={unit} />
      </FieldFrame>
    </details>
  );
}
