import { fieldId } from '../field-id';
import type { ChoiceOption } from '../field-spec';

type Props = {
  readonly type: 'radio' | 'checkbox';
  /** The name of the field that the summary links to; the first choice carries its id. */
  readonly field: string;
  readonly name: string;
  readonly options: readonly ChoiceOption[];
  readonly chosen: readonly string[];
  readonly invalid?: boolean;
  readonly row?: boolean;
};

/** Radio buttons or tick boxes, each line a target of 48 px. */
export function ChoiceList({ type, field, name, options, chosen, invalid, row }: Props) {
  return (
    <div className={row ? 'choices choices-row' : 'choices'}>
      {options.map((option, index) => {
        const id = index === 0 ? fieldId(field) : `${fieldId(field)}-${index}`;
        return (
          <div key={option.value} className="choice">
            <input
              id={id}
              type={type}
              name={name}
              value={option.value}
              defaultChecked={chosen.includes(option.value)}
              aria-invalid={invalid ? true : undefined}
              aria-describedby={option.hint === undefined ? undefined : `${id}-hint`}
            />
            <label htmlFor={id}>
              {option.picture === undefined ? null : (
                <picture>
                  <img src={option.picture} alt="" className="choice-picture" loading="lazy" />
                </picture>
              )}
              {option.label}
            </label>
            {option.hint === undefined ? null : (
              <span id={`${id}-hint`} className="choice-hint">
                {option.hint}
              </span>
            )}
          </div>
        );
      })}
    </div>
  );
}
