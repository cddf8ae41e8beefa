import { isoDateOf } from '@/lib/growing/typed-date';
import { formatDate } from '../format/date-text';
import type { FieldSpec, FormState } from './field-spec';

type Values = FormState['values'];
type Options = readonly { readonly value: string; readonly label: string }[];

const textsAt = (values: Values, name: string): readonly string[] =>
  [values[name] ?? []].flat().filter((text) => text.trim() !== '');
const textAt = (values: Values, name: string): string => textsAt(values, name)[0]?.trim() ?? '';
const labelled = (options: Options, value: string): string =>
  options.find((option) => option.value === value)?.label ?? value;

function dateText(values: Values, name: string, locale: string): string {
  const quick = textAt(values, `${name}__quick`);
  const [day, month, year] = ['day', 'month', 'year'].map((part) => textAt(values, `${name}__${part}`));
  const typed = [day, month, year].join(' ').trim();
  const date = /^\d{4}-\d{2}-\d{2}$/.test(quick) ? quick : isoDateOf(day ?? '', month ?? '', year ?? '');
  return date === undefined ? typed : formatDate(date, locale);
}

/** What a field holds, as a person would read it out; '' for nothing and for parts of a form that hold no value. */
export function typedText(spec: FieldSpec, values: Values, locale: string): string {
  switch (spec.kind) {
    case 'mass':
    case 'length':
    case 'volume':
    case 'temperature':
    case 'area': {
      const text = textAt(values, spec.name);
      const unit = textAt(values, `${spec.name}__unit`) || (spec.units[0]?.value ?? '');
      return text === '' ? '' : `${text} ${labelled(spec.units, unit)}`;
    }
    case 'date':
      return dateText(values, spec.name, locale);
    case 'moment':
      return `${dateText(values, spec.name, locale)} ${textAt(values, `${spec.name}__time`)}`.trim();
    case 'select':
    case 'radio':
    case 'several':
      return textsAt(values, spec.name)
        .map((value) => labelled(spec.options, value))
        .join(', ');
    case 'text':
    case 'email':
    case 'paragraph':
    case 'whole':
    case 'decimal':
      return textAt(values, spec.name);
    default:
      return '';
  }
}
