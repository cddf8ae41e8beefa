import { cpus, loadavg } from 'node:os';
import { encode } from 'next-auth/jwt';
import { readAs } from '@/lib/access/scoped-db';
import { environment } from '@/lib/base/environment';
import { disconnect } from '@/lib/database/client';
import { coordinatorOf } from './coordinator-of';
import { pageReads } from './page-reads';
import { processorTime } from './processor-time';

type Timed = { readonly of: readonly number[]; readonly processor?: number | undefined };
type Times = Timed & { readonly name: string; readonly bar?: number };
type Asked = { readonly email: string; readonly times: number; readonly url: string | undefined };

/** The reader who waits longest of so many, in milliseconds. */
function quantile(values: readonly number[], share: number): number {
  return values.toSorted((a, b) => a - b)[Math.ceil(share * values.length) - 1] ?? Number.NaN;
}

async function timed(times: number, run: () => Promise<unknown>): Promise<Timed> {
  // Twice beforehand: the first reader after a start also waits for plans and for what is compiled.
  await run();
  await run();
  const of: number[] = [];
  for (let count = 0; count < times; count += 1) {
    const start = performance.now();
    await run();
    of.push(performance.now() - start);
  }
  const processor: number[] = [];
  for (let count = 0; count < Math.min(times, 5); count += 1) {
    const took = await processorTime(run);
    if (took !== undefined) processor.push(took);
  }
  return { of, processor: processor.length === 0 ? undefined : quantile(processor, 0.5) };
}

function print({ name, bar, of, processor }: Times): boolean {
  const p95 = quantile(of, 0.95);
  const within = bar === undefined || p95 < bar;
  const least = processor !== undefined && bar !== undefined && processor < bar;
  const verdict =
    bar === undefined ? '' : `  of ${bar} ${within ? 'within' : least ? 'ABOVE by the clock' : 'ABOVE'}`;
  const figures = [quantile(of, 0.5), p95].map((value) => value.toFixed(1).padStart(9));
  const own = (processor?.toFixed(1) ?? '').padStart(9);
  console.log(`${name.padEnd(40)}${figures.join('')}${own}${verdict}`);
  return within;
}

/**
 * Milliseconds of what each page reads and works out, p50 and p95, in the network of the coordinator with this address,
 * beside the least that a transaction takes and a bare statement; with `url` also of whole pages of the server there (which must serve the
 * same database with the same secret), beside a page that reads nothing. Answers whether all are within their bars.
 */
export async function benchPages({ email, times, url }: Asked): Promise<boolean> {
  try {
    const actor = await coordinatorOf(email);
    const [size] = await readAs(
      actor,
      ({ db }) => db.$queryRaw<{ batches: bigint; sites: bigint }[]>`select
        (select count(*) from batch) as batches, (select count(*) from site) as sites`,
    );
    console.log(
      `${size?.batches} batches at ${size?.sites} sites; ${times} readings each, load ${loadavg()
        .map((load) => load.toFixed(1))
        .join(' ')} on ${cpus().length} processors; ms at p50, p95, and of processor time`,
    );
    const pages = await pageReads(actor);
    console.log('\nreading and working out');
    print({
      name: 'a transaction with one row',
      ...(await timed(times, () => readAs(actor, ({ db }) => db.$queryRaw`select 1`))),
    });
    print({
      name: 'the latest fifty rows of batches',
      ...(await timed(times, () =>
        readAs(
          actor,
          ({ db }) => db.$queryRaw`select id, code from batch order by inoculated_on desc limit 50`,
        ),
      )),
    });
    const within: boolean[] = [];
    for (const { name, bar, read } of pages) within.push(print({ name, bar, ...(await timed(times, read)) }));
    if (url === undefined) return within.every(Boolean);
    const token = await encode({
      token: { sid: actor.sessionId },
      secret: environment().NEXTAUTH_SECRET,
      maxAge: 3600,
    });
    const open = async (address: string) => {
      const answer = await fetch(new URL(address, url), {
        headers: { cookie: `next-auth.session-token=${token}` },
        redirect: 'manual',
      });
      await answer.text();
      if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}`);
    };
    console.log(`\nwhole pages of ${url}`);
    print({ name: 'a page that reads nothing', ...(await timed(times, () => open('/offline'))) });
    for (const { name, bar, address } of pages)
      within.push(print({ name, bar, ...(await timed(times, () => open(address))) }));
    return within.every(Boolean);
  } finally {
    await disconnect();
  }
}
