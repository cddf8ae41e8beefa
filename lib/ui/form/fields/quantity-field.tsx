import { errorOf, type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { FieldFrame } from './field-frame';
import { MassEchoLine } from './mass-echo-line';

type Spec = Extract<FieldSpec, { kind: 'mass' | 'length' | 'volume' | 'temperature' | 'area' }>;

/** A number with its unit: the one unit as a suffix, several as a choice beside the box. */
export function QuantityField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const error = errorOf(context, spec.name);
  const unitName = `${spec.name}__unit`;
  const only = spec.units.length === 1 ? spec.units[0] : undefined;
  const label = only === undefined ? spec.label : `${spec.label} (${only.label})`;
  return (
    <FieldFrame spec={{ ...spec, label }} context={context}>
      <span className="input-row">
        <input
          id={fieldId(spec.name)}
          name={spec.name}
          type="text"
          inputMode="decimal"
          className="input input-number"
          defaultValue={textOf(context, spec.name)}
          autoComplete="off"
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy(spec.name, {
            hint: spec.hint !== undefined,
            error: error !== undefined,
          })}
        />
        {only === undefined ? (
          <select
            name={unitName}
            aria-label={`${context.words.unit}: ${spec.label}`}
            className="input input-unit"
            defaultValue={textOf(context, unitName) || spec.units[0]?.value}
          >
            {spec.units.map((unit) => (
              <option key={unit.value} value={unit.value}>
                {unit.label}
              </option>
            ))}
          </select>
        ) : (
          <>
            <input type="hidden" name={unitName} value={only.value} />
            <span className="suffix" aria-hidden="true">
              {only.label}
            </span>
          </>
        )}
      </span>
      {spec.kind === 'mass' ? (
        <MassEchoLine name={spec.name} unitName={unitName} words={context.words} />
      ) : null}
    </FieldFrame>
  );
}
