import { expect, it } from 'vitest';
import { archiveName } from '@/lib/export/archive-name';

it('An archive saved in the evening bears the day of the network, not that of Greenwich', () => {
  const late = new Date('2026-11-27T03:30:00Z');
  expect(archiveName('Larkmoor Growers’ Network', late, 'America/New_York')).toBe(
    'larkmoor-growers-network-2026-11-26.zip',
  );
  expect(archiveName('records', late, 'UTC')).toBe('records-2026-11-27.zip');
});
