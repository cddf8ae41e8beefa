import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test, vi } from 'vitest';
import type { Signal } from '@/lib/analysis/watch-question/signal';
import type { SignalAnswerView } from '@/lib/records/signal/list-signal-answers.query';
import { loadMessages } from '@/lib/ui/messages/load-messages';

vi.mock('next-intl/server', () => ({
  getTranslations: async (namespace: 'watch.watch') =>
    createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace }),
}));
vi.mock('@/lib/ui/watch/signal-line', () => ({
  SignalLine: ({ signal }: { readonly signal: Signal }) => <li>[{signal.key}]</li>,
}));
const { WatchList } = await import('@/lib/ui/watch/watch-list');

const signalsOf = (name: string, count: number): Signal[] =>
  Array.from({ length: count }, (_, at) => ({
    ...{ kind: 'records', siteId: 'mill', missing: 1, implausible: 0 },
    ...{ oldest: '2026-05-01', codes: ['MLG-1'] },
    ...{ key: `${name} ${at}`, since: '2026-05-01' },
  }));

/** What was answered was so a second after what stands before it. */
async function listed(open: number, answered: number): Promise<string> {
  const past = signalsOf('past', answered);
  const answer = (at: number): SignalAnswerView => ({
    ...{ recordId: 'a', answer: 'seen', words: null, by: 'Wren' },
    at: new Date(Date.parse('2026-05-02T10:00:00Z') + at * 1000).toISOString(),
  });
  return renderToStaticMarkup(
    await WatchList({
      signals: [...signalsOf('new', open), ...past],
      answers: new Map(past.map(({ key }, at) => [key, answer(at)])),
      words: {
        words: Object.assign(() => '', { has: () => true }),
        locale: 'en-US',
        siteName: () => 'Mill Lane',
        codes: new Map(),
      },
      ...{ since: '2026-04-20', timeZone: 'UTC', seen: async () => {} },
    }),
  );
}

test('of very many signals the newest hundred are listed, and the page says of how many', async () => {
  const page = await listed(1161, 0);
  expect(page).toContain('1,161 things have stepped out of line');
  expect(page).toContain('These are the newest 100 of 1,161. As you answer them, the others come up.');
  expect(page).toContain('[new 99]');
  expect(page).not.toContain('[new 100]');
});

test('of very many answers those given last are listed, the last one first', async () => {
  const page = await listed(0, 150);
  expect(page).toContain('These are the 100 answered last, of 150.');
  expect(page.match(/\[past \d+\]/g)).toEqual(
    Array.from({ length: 100 }, (_, place) => `[past ${149 - place}]`),
  );
});

test('of as many as are listed nothing is said of others', async () => {
  const page = await listed(100, 1);
  expect(page).toContain('[new 99]');
  expect(page).not.toContain('These are the ');
});
