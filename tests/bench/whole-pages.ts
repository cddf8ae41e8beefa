import { encode } from 'next-auth/jwt';
import { environment } from '@/lib/base/environment';
import type { PageRead } from './page-reads';
import { processTime } from './processor-time';
import { quantile } from './timed';

type Asked = {
  readonly url: string;
  readonly sessionId: string;
  readonly times: number;
  /** The server's process, on this machine, to tell its processor time by; undefined to leave that out. */
  readonly pid: number | undefined;
};

/** A page that is still being written after so long, such as one that waits for a model to be fitted, is told and left. */
const longestMs = 60_000;

const isLate = (error: unknown) => error instanceof DOMException && error.name === 'TimeoutError';

/**
 * Times whole pages of a built server beside one that reads nothing, and a line for each; answers whether all are within
 * their bars. Of the server's own time on a processor the mean is told, since the kernel tells it in steps of 10 ms.
 */
export async function wholePages(
  pages: readonly PageRead[],
  { url, sessionId, times, pid }: Asked,
): Promise<boolean> {
  const token = await encode({
    token: { sid: sessionId },
    secret: environment().NEXTAUTH_SECRET,
    maxAge: 3600,
  });
  const open = async (address: string) => {
    const answer = await fetch(new URL(address, url), {
      headers: { cookie: `next-auth.session-token=${token}` },
      redirect: 'manual',
      signal: AbortSignal.timeout(longestMs),
    });
    await answer.text();
    if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}`);
  };
  console.log(`\nwhole pages of ${url}`);
  console.log(
    `${''.padEnd(44)}${['p50', 'p95', 'server'].map((word) => word.padStart(9)).join('')}   (mean of its processor time, database apart)`,
  );
  let all = true;
  const line = async ({ name, address, bar, before }: Omit<PageRead, 'read'>) => {
    for (const count of [-2, -1]) {
      await before?.();
      await open(address(count));
    }
    const own = pid === undefined ? 0 : processTime(pid);
    const clock: number[] = [];
    for (let count = 0; count < times; count += 1) {
      await before?.();
      const start = performance.now();
      await open(address(count));
      clock.push(performance.now() - start);
    }
    const server = pid === undefined ? '' : ((processTime(pid) - own) / times).toFixed(0);
    const p95 = quantile(clock, 0.95);
    const verdict = bar === undefined ? '' : `  of ${bar} ${p95 < bar ? 'within' : 'ABOVE'}`;
    const figures = [quantile(clock, 0.5).toFixed(1), p95.toFixed(1), server];
    console.log(`${name.padEnd(44)}${figures.map((text) => text.padStart(9)).join('')}${verdict}`);
    if (bar !== undefined && p95 >= bar) all = false;
  };
  await line({ name: 'a page that reads nothing', address: () => '/offline' });
  for (const page of pages) {
    try {
      await line(page);
    } catch (error) {
      if (!isLate(error)) throw error;
      console.log(`${page.name.padEnd(44)} not written to its end within ${longestMs / 1000} s`);
      all = false;
    }
  }
  return all;
}
