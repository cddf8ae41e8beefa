import { afterEach, expect, test, vi } from 'vitest';
import { postFile } from '@/lib/ui/form/post-file';

const data = new FormData();
data.set('caption', 'Pins');

function answering(respond: () => Promise<Response>) {
  const fetching = vi.fn(respond);
  vi.stubGlobal('fetch', fetching);
  return fetching;
}
afterEach(() => vi.unstubAllGlobals());

test('a file is posted by the page, and the page learns where to go on to', async () => {
  const fetching = answering(async () => Response.json({ goOnTo: '/batches/b1?saved=photo#photos' }));
  expect(await postFile('/api/photos', data)).toEqual({ goOnTo: '/batches/b1?saved=photo#photos' });
  expect(fetching).toHaveBeenCalledWith('/api/photos', {
    method: 'POST',
    body: data,
    headers: { accept: 'application/json' },
  });
});

test('what the server refuses is told in its words', async () => {
  const errors = [{ field: '', text: 'Sign in first' }];
  answering(async () => Response.json({ title: 'Refused', kind: 'refused', errors }, { status: 401 }));
  expect(await postFile('/api/photos', data)).toEqual({ refused: 'Sign in first' });
});

test.each([
  ['a request that fails', () => Promise.reject(new TypeError('Failed to fetch'))],
  ['a page of a network without internet', async () => new Response('<h1>Welcome</h1>')],
  ['an answer that leads to another site', async () => Response.json({ goOnTo: '//elsewhere.example' })],
  ['an answer of another shape', async () => Response.json(null)],
])('%s is no answer', async (_, respond) => {
  answering(respond);
  expect(await postFile('/api/import', data)).toBeUndefined();
});
