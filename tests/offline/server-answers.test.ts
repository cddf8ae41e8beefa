import { afterEach, describe, expect, it, vi } from 'vitest';
import { serverAnswers } from '@/lib/offline/server-answers';

afterEach(() => vi.unstubAllGlobals());

describe('whether the server answers', () => {
  it('is yes where it does, and no where something else stands in its place or nothing is reached', async () => {
    vi.stubGlobal('fetch', async () => new Response(null, { status: 200 }));
    expect(await serverAnswers()).toBe(true);
    vi.stubGlobal('fetch', async () => new Response(null, { status: 503 }));
    expect(await serverAnswers()).toBe(false);
    vi.stubGlobal('fetch', async () => {
      throw new TypeError('Failed to fetch');
    });
    expect(await serverAnswers()).toBe(false);
  });

  it('is no where nothing comes through, once the time for it is over', async () => {
    vi.stubGlobal(
      'fetch',
      (_address: string, { signal }: RequestInit) =>
        new Promise((_answer, fail) => signal?.addEventListener('abort', () => fail(signal.reason))),
    );
    const time = new AbortController();
    const answer = serverAnswers(time.signal);
    time.abort();
    expect(await answer).toBe(false);
  });
});
