import { describe, expect, it } from 'vitest';
import { addressValues } from '@/lib/ui/form/address-values';
import type { FieldSpec } from '@/lib/ui/form/field-spec';

const fields: FieldSpec[] = [
  { kind: 'volume', name: 'water', label: 'Water', units: [{ value: 'L', label: 'L' }] },
  {
    kind: 'group',
    name: 'more',
    legend: 'More',
    fields: [{ kind: 'text', name: 'components.0.note', label: 'Note' }],
  },
  { kind: 'caution', name: 'care', title: 'Care', lines: [] },
];

describe('what an address puts into a form', () => {
  it('is the fields of that form and their companions, groups opened', () => {
    expect(addressValues(fields, { water: '50', water__unit: 'L', 'components.0.note': 'wet' })).toEqual({
      water: '50',
      water__unit: 'L',
      'components.0.note': 'wet',
    });
  });

  it('is nothing that the form does not ask', () => {
    expect(addressValues(fields, { methodId: 'x', care: 'y', confirmed: 'method-unsuited' })).toEqual({});
  });

  it('is one text of a field, cut where nobody types that much', () => {
    const { water } = addressValues(fields, { water: ['9'.repeat(10_000), '2'] });
    expect(water).toHaveLength(500);
  });
});
