import dynamic from 'next/dynamic';
import { Caution } from '@/lib/ui/page/caution';
import { type FieldContext, textsOf } from '../field-context';
import type { FieldSpec } from '../field-spec';
import { ChoiceField } from './choice-field';
import { DateField } from './date-field';
import { GroupField } from './group-field';
import { NumberField } from './number-field';
import { ParagraphField } from './paragraph-field';
import { QuantityField } from './quantity-field';
import { SelectField } from './select-field';
import { TextField } from './text-field';

/** A chunk of its own: most forms have no sums. */
const SumsBox = dynamic(() => import('@/lib/ui/sums/sums-box').then((sums) => sums.SumsBox));

/** Any field of a form by its kind. */
export function Field({ spec, context }: { spec: FieldSpec; context: FieldContext }) {
  switch (spec.kind) {
    case 'text':
    case 'email':
    case 'password':
      return <TextField spec={spec} context={context} />;
    case 'paragraph':
      return <ParagraphField spec={spec} context={context} />;
    case 'whole':
    case 'decimal':
      return <NumberField spec={spec} context={context} />;
    case 'mass':
    case 'length':
    case 'volume':
    case 'temperature':
    case 'area':
      return <QuantityField spec={spec} context={context} />;
    case 'date':
    case 'moment':
      return <DateField spec={spec} context={context} />;
    case 'select':
      return <SelectField spec={spec} context={context} />;
    case 'radio':
    case 'several':
      return <ChoiceField spec={spec} context={context} />;
    case 'hidden':
      return textsOf(context, spec.name).map((value) => (
        <input key={value} type="hidden" name={spec.name} value={value} />
      ));
    case 'caution':
      return <Caution title={spec.title} lines={spec.lines} />;
    case 'prose':
      return <p className="prose">{spec.text}</p>;
    case 'link':
      return (
        <p className="prose">
          <a href={spec.href}>{spec.text}</a>
        </p>
      );
    case 'sums':
      return <SumsBox spec={spec.sums} values={context.values} />;
    case 'group':
      return (
        <GroupField spec={spec} context={context}>
          {spec.fields.map((field) => (
            <Field key={field.name} spec={field} context={context} />
          ))}
        </GroupField>
      );
  }
}
