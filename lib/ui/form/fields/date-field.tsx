import { errorOf, type FieldContext, textOf } from '../field-context';
import { fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { ChoiceList } from './choice-list';
import { DayParts } from './day-parts';
import { FieldSet } from './field-set';

type Spec = Extract<FieldSpec, { kind: 'date' | 'moment' }>;

/**
 * A calendar date: one tap for today or yesterday, three boxes for another day. The boxes show only when
 * "another day" is chosen (a style rule, so it works without script) and post their strings all the same.
 */
export function DateField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const invalid = errorOf(context, spec.name) !== undefined;
  const quickName = `${spec.name}__quick`;
  const quick = spec.quick.length > 0;
  const hint = spec.hint ?? (quick ? undefined : context.words.dateExample);
  return (
    <FieldSet spec={hint === undefined ? spec : { ...spec, hint }} context={context}>
      {quick ? (
        <ChoiceList
          type="radio"
          field={spec.name}
          name={quickName}
          options={spec.quick}
          chosen={[textOf(context, quickName)]}
          invalid={invalid}
          row
        />
      ) : null}
      <DayParts
        name={spec.name}
        context={context}
        hint={hint !== undefined}
        invalid={invalid}
        first={!quick}
      />
      {spec.kind === 'moment' ? (
        <div className="day-part">
          <label htmlFor={`${fieldId(spec.name)}-time`}>{context.words.time}</label>
          <input
            id={`${fieldId(spec.name)}-time`}
            name={`${spec.name}__time`}
            type="text"
            className="input input-time"
            size={5}
            placeholder="16:40"
            defaultValue={textOf(context, `${spec.name}__time`)}
            autoComplete="off"
            aria-invalid={invalid ? true : undefined}
          />
        </div>
      ) : null}
    </FieldSet>
  );
}
