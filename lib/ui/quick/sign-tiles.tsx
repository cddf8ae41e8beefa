import { contaminationSigns } from '@/lib/growing/contamination-signs';
import { errorOf, type FieldContext, textOf } from '../form/field-context';
import { fieldId } from '../form/field-id';
import { FieldSet } from '../form/fields/field-set';
import { fillPlaces } from './fill-places';
import type { QuickProps } from './quick-props';

/** What one sees or smells, as large choices. What it often turns out to be is named after the choice, not before. */
export function SignTiles({ props, context }: { props: QuickProps; context: FieldContext }) {
  const { words, snapshot } = props;
  const { language } = snapshot.person;
  const chosen = textOf(context, 'sign');
  const invalid = errorOf(context, 'sign') !== undefined;
  return (
    <FieldSet spec={{ name: 'sign', label: words.fields.sign }} context={context}>
      <div className="tiles tiles-two">
        {contaminationSigns.map(({ sign, looksLike }, index) => {
          const id = index === 0 ? fieldId('sign') : `${fieldId('sign')}-${sign}`;
          const group = looksLike
            .map(({ name, genera }) => `${name[language].toLocaleLowerCase()} (${genera.join(', ')})`)
            .join(words.finding.or);
          return [
            <label key={sign} className="choice tile">
              <input
                id={id}
                type="radio"
                name="sign"
                value={sign}
                defaultChecked={sign === chosen}
                aria-invalid={invalid ? true : undefined}
                aria-describedby={group === '' ? undefined : `${id}-group`}
              />
              <span>{words.sign[sign]}</span>
            </label>,
            group === '' ? null : (
              <p key={`${sign}-group`} id={`${id}-group`} className="tile-after">
                {fillPlaces(words.finding.looksLike, { group })}
              </p>
            ),
          ];
        })}
      </div>
    </FieldSet>
  );
}
