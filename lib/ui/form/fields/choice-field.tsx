import { errorOf, type FieldContext, textsOf } from '../field-context';
import type { FieldSpec } from '../field-spec';
import { ChoiceList } from './choice-list';
import { FieldSet } from './field-set';

type Spec = Extract<FieldSpec, { kind: 'radio' | 'several' }>;

export function ChoiceField({ spec, context }: { spec: Spec; context: FieldContext }) {
  return (
    <FieldSet spec={spec} context={context}>
      <ChoiceList
        type={spec.kind === 'radio' ? 'radio' : 'checkbox'}
        field={spec.name}
        name={spec.name}
        options={spec.options}
        chosen={textsOf(context, spec.name)}
        invalid={errorOf(context, spec.name) !== undefined}
      />
    </FieldSet>
  );
}
