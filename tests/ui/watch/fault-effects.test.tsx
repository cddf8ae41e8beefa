import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test, vi } from 'vitest';
import type { RecordFaults } from '@/lib/analysis/record-question/read-record-faults';
import type { InsightWords } from '@/lib/ui/insight/insight-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';

vi.mock('next-intl/server', () => ({
  getLocale: async () => 'en-US',
  getTranslations: async (namespace: 'watch.records') =>
    createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace }),
}));
vi.mock('@/lib/ui/insight/figure-link', () => ({ FigureLink: () => <span>13.7</span> }));
const { FaultEffectsTable } = await import('@/lib/ui/watch/fault-effects-table');

type Effect = RecordFaults['effects'][number];
const words = { number: (value: number) => `${value}` } as Partial<InsightWords> as InsightWords;

async function table(rate: Effect['rate']): Promise<string> {
  const effect = { container: 'bucket', due: 100, uninspected: 8, uninspectedPercent: 8, rate } as Effect;
  return renderToStaticMarkup(await FaultEffectsTable({ effects: [effect], words }));
}

test('bounds that lie above the counted rate say so in their row, and why', async () => {
  const above = await table({ counted: 13.7, low: 13.9, high: 20.2 });
  expect(above).toContain('above the counted rate either way: much was found before');
  const around = await table({ counted: 13.7, low: 12.9, high: 20.2 });
  expect(around).not.toContain('above the counted rate');
});
