import { expect, test, vi } from 'vitest';
import type { ComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import { comparisonFields } from '@/lib/ui/comparison/comparison-fields';

vi.mock('next-intl/server', () => ({ getTranslations: async () => (key: string) => key }));

const sites = [
  { id: 'quarry', code: 'QU', name: 'Quarry', left: true },
  { id: 'mill', code: 'ML', name: 'Mill Lane', left: false },
  { id: 'orchard', code: 'OR', name: 'Orchard', left: true },
];
const choices = { species: [], materials: [], methods: [], sites } as unknown as ComparisonChoices;

async function offered(chosenSite: string | undefined) {
  const fields = await comparisonFields(choices, 'en', chosenSite);
  return fields.flatMap((field) =>
    field.kind === 'select' && field.name === 'site' ? field.options.map(({ label }) => label) : [],
  );
}

test('of the sites that have left the filter offers the chosen one alone', async () => {
  expect(await offered(undefined)).toEqual(['Mill Lane']);
  expect(await offered('mill')).toEqual(['Mill Lane']);
  expect(await offered('quarry')).toEqual(['Mill Lane', 'Quarry']);
});
