import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test, vi } from 'vitest';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import { loadMessages } from '@/lib/ui/messages/load-messages';

vi.mock('next-intl/server', () => ({
  getTranslations: async (namespace: 'notices') =>
    createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace }),
}));
vi.mock('@/lib/ui/notices/notice-text', () => ({
  NoticeText: ({ notice }: { readonly notice: NoticeView }) => <p>{notice.whatToDo}</p>,
}));
vi.mock('@/lib/ui/notices/mark-read-form', () => ({ MarkReadForm: () => <form /> }));
const { UnreadNotices } = await import('@/lib/ui/notices/unread-notices');

test('what a notice asks of a site stands on the first page itself, behind no fold', async () => {
  const notice = { id: 'n', whatToDo: 'Start nothing with what is left of it' } as NoticeView;
  const page = renderToStaticMarkup(
    await UnreadNotices({ notices: [notice], language: 'en', markRead: async () => {} }),
  );
  expect(page).toContain('Start nothing with what is left of it');
  expect(page).not.toContain('<details');
  expect(await UnreadNotices({ notices: [], language: 'en', markRead: async () => {} })).toBeNull();
});
