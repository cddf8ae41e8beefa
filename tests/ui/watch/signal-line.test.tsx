import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test, vi } from 'vitest';
import type { DynamicWords } from '@/lib/ui/i18n/dynamic-words';
import { loadMessages } from '@/lib/ui/messages/load-messages';

const messages = loadMessages('en');
vi.mock('next-intl/server', () => ({
  getTranslations: async (namespace: 'watch.watch') =>
    createTranslator({ locale: 'en-US', messages, namespace }),
}));
const { SignalLine } = await import('@/lib/ui/watch/signal-line');

test('a line of missing records says since when the oldest is missing, and keeps each code on one line', async () => {
  const page = renderToStaticMarkup(
    await SignalLine({
      signal: {
        ...{ kind: 'records', siteId: 'mill', missing: 2, implausible: 0, codes: ['MLG-4', 'MLG-9'] },
        ...{ key: 'records:mill:2026-11-27', since: '2026-11-27', oldest: '2026-11-15' },
      },
      words: {
        words: createTranslator({ locale: 'en-US', messages }) as unknown as DynamicWords,
        ...{ locale: 'en-US', siteName: () => 'Mill Lane', codes: new Map() },
      },
      ...{ answer: undefined, timeZone: 'UTC', seen: async () => {} },
    }),
  );
  expect(page).toContain('Since 15\u00a0Nov\u00a02026');
  expect(page).toMatch(/<span[^>]*>MLG-4<\/span>/);
});
