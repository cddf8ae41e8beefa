import { type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';

type Props = {
  readonly name: string;
  readonly context: FieldContext;
  readonly hint: boolean;
  readonly invalid: boolean;
  /** True when no quick choice stands before, so that the first box is what the summary links to. */
  readonly first: boolean;
};

const sizes = { day: 2, month: 10, year: 4 } as const;

/** Three boxes for a known date; a month may be typed as a number or by name. */
export function DayParts({ name, context, hint, invalid, first }: Props) {
  const id = fieldId(name);
  return (
    <div className="day-parts">
      {(['day', 'month', 'year'] as const).map((part) => {
        const inputId = first && part === 'day' ? id : `${id}-${part}`;
        return (
          <div key={part} className="day-part">
            <label htmlFor={inputId}>{context.words[part]}</label>
            <input
              id={inputId}
              name={`${name}__${part}`}
              type="text"
              inputMode={part === 'month' ? undefined : 'numeric'}
              className={`input input-${part}`}
              size={sizes[part]}
              defaultValue={textOf(context, `${name}__${part}`)}
              autoComplete="off"
              aria-invalid={invalid ? true : undefined}
              aria-describedby={describedBy(name, { hint, error: invalid })}
            />
          </div>
        );
      })}
    </div>
  );
}
