import { expect, it, vi } from 'vitest';
import { endFields } from '@/lib/ui/treatments/reading-fields';

vi.mock('next-intl/server', () => ({ getTranslations: async () => (key: string) => key }));

const names = async (loadCelsiusAtSpawning: number | null) =>
  (await endFields({ days: [], temperatureUnit: 'celsius', loadCelsiusAtSpawning })).map(({ name }) => name);

it('asks for the temperature of the load as a run ends only where none is written down', async () => {
  expect(await names(null)).toEqual(['endedAt', 'loadCelsiusAtSpawning', 'id', 'revision']);
  expect(await names(24)).toEqual(['endedAt', 'id', 'revision']);
});
