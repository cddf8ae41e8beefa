import type { Actor } from '@/lib/access/actor';
import { readAs, readSnapshot } from '@/lib/access/scoped-db';
import { readComparisonChoices } from '@/lib/analysis/comparison/comparison-choices';
import { readComparison } from '@/lib/analysis/comparison/read-comparison';
import { readComparisonPage } from '@/lib/analysis/comparison/read-comparison-page';
import { readRowsBehind } from '@/lib/analysis/comparison/read-rows-behind';
import { forgetBeside } from '@/lib/analysis/outcomes/remembered-beside';
import { forgetYears } from '@/lib/analysis/outcomes/remembered-years';
import { addDays } from '@/lib/growing/calendar-date';
import type { PageRead } from './page-reads';
import { writeOne } from './write-one';

const [comparison, list] = [300, 100];
type Query = Readonly<Record<string, string>>;

function forgetAll(): void {
  forgetBeside();
  forgetYears();
}

/**
 * Comparisons as people ask for them. One line is the first question of a process. Most others are asked for the first time:
 * up to a day far ahead that is another one each time, which takes in the same batches and the same sums and was never asked
 * before, in a process that was asked something of that kind of container. Lines after a write ask the same again, each time after somebody has written at a site; the others until the next write.
 */
export async function comparisonReads(actor: Actor, now: Date): Promise<PageRead[]> {
  const choices = await readAs(actor, (context) => readComparisonChoices(context, now));
  const [method, site] = [choices.methods[0], choices.sites[0]];
  const from = choices.defaults?.from ?? '2000-01-01';
  const to = choices.defaults?.to ?? '2100-01-01';
  const year = Number(to.slice(0, 4)) - 1;
  const [used] = await readAs(
    actor,
    ({ db }) => db.$queryRaw<{ method: string; material: string }[]>`
      select method_key as method, material_key as material from outcome_network_total
      where network_id = ${actor.networkId}::uuid and container = 'bag' and span = 'year' and measure = 'contamination'
        and length(method_key) = 36 and length(material_key) = 36
      group by 1, 2 order by sum(batches) desc limit 1`,
  );
  const { method: mostUsed = method?.id ?? '', material = '' } = used ?? {};
  // More of them than a process remembers.
  const quarters = (of: number, start: number) => ({
    from: `${of}-0${1 + 3 * start}-01`,
    to: `${of}-${['06-30', '09-30', '12-31'][start]}`,
  });
  const open = (at: number) => ({ from, to: addDays('2080-01-01', at) });
  // Each line asks with days of its own, or one would be answered from what another asked.
  let lines = 0;
  const apart = (queryOf: (at: number) => Query) => {
    lines += 1;
    const before = 100 * lines;
    return (at: number) => queryOf(before + at);
  };
  const afterWrite = { before: () => writeOne(actor) };
  const page = (
    name: string,
    queryOf: (at: number) => Query,
    more: Pick<PageRead, 'before'> = {},
  ): PageRead => {
    const query = apart(queryOf);
    return {
      ...more,
      name: `comparison, ${name}`,
      address: (at) => `/comparison?${new URLSearchParams(query(at))}`,
      bar: comparison,
      read: (at) => readAs(actor, (context) => readComparisonPage(context, query(at), now)),
    };
  };
  const behind = (
    name: string,
    queryOf: (at: number) => Query,
    more: Pick<PageRead, 'before'> = {},
  ): PageRead => {
    const query = apart(queryOf);
    return {
      ...more,
      name: `batches behind, ${name}`,
      address: (at) => `/comparison/rows?${new URLSearchParams(query(at))}`,
      bar: list,
      read: (at) => readAs(actor, (context) => readRowsBehind(context, query(at), now)),
    };
  };
  const fiveYears = (at: number) => ({ from: addDays('2021-02-11', at % 100), to: '2026-05-20' });
  const ever = (at: number) => ({ from: '2000-01-01', to: addDays('2080-01-01', at), species: 'all' });
  const always = { from: '2000-01-01', to: '2100-01-01', species: 'all' };
  const farDown = { after: '2018-03-01_00000000-0000-0000-0000-000000000000' };
  return [
    page('as it opens, after a write', () => ({}), afterWrite),
    page('as it opens, until the next', () => ({})),
    page('as it opens, first in a process', open, { before: async () => forgetAll() }),
    page('as it opens, asked first', open),
    page('its second page', (at) => ({ ...open(at), page: '2' })),
    page('a method', (at) => ({ ...open(at), method: mostUsed })),
    page('a site', (at) => ({ ...open(at), site: site?.id ?? '' })),
    page('a material', (at) => ({ ...open(at), material })),
    page('a material, after a write', () => ({ material }), afterWrite),
    page('all species', (at) => ({ ...open(at), species: 'all' })),
    page('all species, after a write', () => ({ species: 'all' }), afterWrite),
    page('two quarters', (at) => quarters(year - (at % 9), Math.floor(at / 9) % 3)),
    page('odd days of five years', fiveYears),
    page('odd days, after a write', () => fiveYears(0), afterWrite),
    page('all years and species', ever),
    page('all years and species, after a write', () => ever(0), afterWrite),
    behind('of all, after a write', () => ({}), afterWrite),
    behind('of all, until the next', () => ({})),
    behind('of all, asked first', open),
    behind('of a method, after a write', () => ({ method: mostUsed }), afterWrite),
    behind('of a method, asked first', (at) => ({ ...open(at), method: mostUsed })),
    behind('of a method that few have', (at) => ({ ...open(at), method: 'mixed' })),
    behind('of a method at a site', (at) => ({ ...open(at), method: mostUsed, site: site?.id ?? '' })),
    behind('far down, after a write', () => ({ ...always, ...farDown }), afterWrite),
    behind('far down, asked first', (at) => ({ ...ever(at), ...farDown })),
    {
      name: 'the file of the comparison',
      address: (at) => `/comparison/csv?${new URLSearchParams(open(at))}`,
      read: (at) => readSnapshot(actor, (context) => readComparison(context, open(at), now)),
    },
  ];
}
