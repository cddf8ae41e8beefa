import { cpus, loadavg } from 'node:os';
import { readAs } from '@/lib/access/scoped-db';
import { disconnect } from '@/lib/database/client';
import { coordinatorOf } from './coordinator-of';
import { pageReads } from './page-reads';
import { printTimed, timed, timedHeading } from './timed';
import { wholePages } from './whole-pages';

type Asked = {
  readonly email: string;
  readonly times: number;
  readonly url: string | undefined;
  readonly pid: number | undefined;
};

/**
 * Milliseconds of what each page reads and works out in the network of the coordinator with this address, by the clock and
 * on processors, beside the least that a transaction takes and a bare statement; with `url` also of whole pages of the
 * server there (which must serve the same database with the same secret), beside a page that reads nothing. Answers
 * whether all are within their bars. Some lines write between readings: see `write-one`.
 */
export async function benchPages({ email, times, url, pid }: Asked): Promise<boolean> {
  try {
    const actor = await coordinatorOf(email);
    const [size] = await readAs(
      actor,
      ({ db }) => db.$queryRaw<{ batches: bigint; sites: bigint }[]>`select
        (select count(*) from batch) as batches, (select count(*) from site) as sites`,
    );
    const load = loadavg().map((one) => one.toFixed(1));
    console.log(`${size?.batches} batches at ${size?.sites} sites; ${times} readings each in milliseconds, by the clock and on
processors (cpu, of it in the database and here, each at p50); load ${load.join(' ')} on ${cpus().length} processors`);
    console.log(`\nreading and working out\n${timedHeading}`);
    const bare = (name: string, read: Parameters<typeof readAs>[1]) =>
      timed(times, () => readAs(actor, read)).then((took) => printTimed(name, took));
    await bare('a transaction with one row', ({ db }) => db.$queryRaw`select 1`);
    await bare(
      'the latest fifty rows of batches',
      ({ db }) => db.$queryRaw`select id, code from batch order by inoculated_on desc limit 50`,
    );
    await bare(
      "a year's totals of sites, added up",
      ({ db }) => db.$queryRaw`select method_key, sum(contaminated), sum(fresh) from outcome_site_total
        where network_id = ${actor.networkId}::uuid and container = 'bag' and span = 'year'
          and starts_on = date_trunc('year', now() - interval '1 year')::date group by method_key`,
    );
    const pages = await pageReads(actor);
    let all = true;
    for (const { name, bar, read, before } of pages) {
      let count = 0;
      all = printTimed(name, await timed(times, () => read(count++), before), bar) && all;
    }
    if (url === undefined) return all;
    return (await wholePages(pages, { url, sessionId: actor.sessionId, times, pid })) && all;
  } finally {
    await disconnect();
  }
}
