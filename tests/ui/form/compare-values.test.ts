import { describe, expect, it } from 'vitest';
import { compareValues } from '@/lib/ui/form/compare-values';
import type { FieldSpec } from '@/lib/ui/form/field-spec';

const fields: readonly FieldSpec[] = [
  { kind: 'hidden', name: 'revision' },
  { kind: 'date', name: 'weighedOn', label: 'Day of weighing', quick: [] },
  {
    kind: 'mass',
    name: 'fresh',
    label: 'Fresh mass',
    units: [
      { value: 'kg', label: 'kg' },
      { value: 'lb', label: 'lb' },
    ],
  },
  {
    kind: 'radio',
    name: 'trimState',
    label: 'How it was weighed',
    options: [{ value: 'trimmed', label: 'Trimmed' }],
  },
  {
    kind: 'group',
    name: 'more',
    legend: 'More',
    fields: [{ kind: 'paragraph', name: 'note', label: 'Note' }],
  },
  {
    kind: 'group',
    name: 'seldom',
    legend: 'More',
    folded: true,
    fields: [{ kind: 'text', name: 'grade', label: 'Grade' }],
  },
  { kind: 'paragraph', name: 'reason', label: 'Reason' },
];
const theirs = {
  revision: '2',
  fresh: '1.36',
  fresh__unit: 'kg',
  weighedOn__quick: 'other',
  weighedOn__day: '4',
  weighedOn__month: '7',
  weighedOn__year: '2026',
  note: '',
};

describe('two fillings of a form side by side', () => {
  it('name only what differs, with units, dates and choices as a person reads them out', () => {
    const yours = {
      ...theirs,
      fresh: '3',
      fresh__unit: 'lb',
      weighedOn__day: '5',
      trimState: 'trimmed',
      note: 'wet',
      grade: 'A',
    };
    expect(compareValues(fields, theirs, yours, 'en-US')).toEqual([
      {
        name: 'weighedOn',
        label: 'Day of weighing',
        theirs: '4\u00a0Jul\u00a02026',
        yours: '5\u00a0Jul\u00a02026',
      },
      { name: 'fresh', label: 'Fresh mass', theirs: '1.36 kg', yours: '3 lb' },
      { name: 'trimState', label: 'How it was weighed', theirs: '', yours: 'Trimmed' },
      { name: 'note', label: 'More: Note', theirs: '', yours: 'wet' },
      { name: 'grade', label: 'Grade', theirs: '', yours: 'A' },
    ]);
  });

  it('leave out the revision, the reason and what was only written another way', () => {
    const yours = { ...theirs, revision: '1', reason: 'scale', weighedOn__quick: '2026-07-04' };
    expect(compareValues(fields, theirs, yours, 'en-US')).toEqual([]);
  });
});
