import type { ChoiceOption, FieldSpec } from '@/lib/ui/form/field-spec';

const units: readonly ChoiceOption[] = [
  { value: 'kg', label: 'kg' },
  { value: 'lb', label: 'lb' },
];
const options: readonly ChoiceOption[] = [
  { value: 'x', label: 'Green', hint: 'like a lime' },
  { value: 'y', label: 'Black' },
  { value: 'z', label: 'Yellow' },
];
const quick: readonly ChoiceOption[] = [
  { value: '2026-07-04', label: 'Today' },
  { value: 'other', label: 'Another day' },
];

/** A form with a field of each kind. */
export const everyKind: readonly FieldSpec[] = [
  { kind: 'hidden', name: 'token' },
  { kind: 'prose', name: 'lead', text: 'Weigh what was picked today.' },
  { kind: 'caution', name: 'spores', title: 'Take care', lines: ['Wear a mask.'] },
  { kind: 'text', name: 'place', label: 'place', hint: 'Where it hangs', width: 'short' },
  { kind: 'email', name: 'email', label: 'e-mail address', autoComplete: 'username' },
  { kind: 'password', name: 'secret', label: 'password', autoComplete: 'current-password' },
  { kind: 'paragraph', name: 'note', label: 'note', optional: true },
  { kind: 'whole', name: 'lines.0.flush', label: 'flush' },
  { kind: 'decimal', name: 'moisture', label: 'moisture', suffix: '%' },
  { kind: 'mass', name: 'fresh', label: 'fresh mass', units },
  { kind: 'length', name: 'cut', label: 'cut length', units: [{ value: 'cm', label: 'cm' }] },
  { kind: 'volume', name: 'water', label: 'water', units },
  { kind: 'temperature', name: 'heat', label: 'temperature', units },
  { kind: 'area', name: 'bed', label: 'area', units },
  { kind: 'date', name: 'on', label: 'day of harvest', quick },
  { kind: 'date', name: 'made', label: 'made on', quick: [] },
  { kind: 'moment', name: 'lifted', label: 'lifted out', quick },
  {
    kind: 'select',
    name: 'kept',
    label: 'where it goes',
    options: [
      { value: 'a', label: 'Sold' },
      { value: 'b', label: 'Kept' },
    ],
    notListed: { href: '/sites/choose', text: 'Somewhere else', note: 'Best done first.' },
  },
  { kind: 'radio', name: 'kind', label: 'kind', options },
  { kind: 'several', name: 'seen', label: 'what you see', options },
  {
    kind: 'group',
    name: 'more',
    legend: 'more',
    hint: 'If known',
    fields: [{ kind: 'text', name: 'grade', label: 'grade' }],
  },
  {
    kind: 'group',
    name: 'rare',
    legend: 'rarely needed',
    folded: true,
    fields: [{ kind: 'text', name: 'crate', label: 'crate' }],
  },
];
