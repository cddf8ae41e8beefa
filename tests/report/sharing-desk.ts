import type { z } from 'zod';
import { type Command, runAs } from '@/lib/access/run-command';
import type { Result } from '@/lib/base/result';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { publishReport } from '@/lib/report/publish-report.command';
import type { World } from '../access/world';

/** What a coordinator does to share a report, today: the database judges by its own clock whether a link is open. */
export function sharingDesk(world: World) {
  const now = new Date();
  const today = todayInZone(world.people.coordinator.networkTimeZone, now);
  const run = <S extends z.ZodType, T>(
    schema: S,
    command: Command<z.output<S>, T>,
    raw: unknown,
  ): Promise<Result<T>> => runAs(world.people.coordinator, schema, command, raw, { now });
  async function done<S extends z.ZodType, T>(
    schema: S,
    command: Command<z.output<S>, T>,
    raw: unknown,
  ): Promise<T> {
    const result = await run(schema, command, raw);
    if (result.kind !== 'ok') throw new Error(`${command.name}: ${JSON.stringify(result)}`);
    return result.value;
  }
  const draft = async () => {
    const year = { title: 'A year', from: '2026-01-01', to: '2026-07-20', indicators: ['harvest'] };
    return (await done(buildReportInput, buildReport, year)).id;
  };
  const publish = (id: string) => done(publishReportInput, publishReport, { id });
  return {
    ...{ today, run, done, draft, publish },
    published: async () => (await publish(await draft())).id,
    link: (reportId: string, days = 10) => ({
      reportId,
      forWhom: 'A foundation',
      language: 'es',
      lastDay: addDays(today, days),
    }),
  };
}

export type SharingDesk = ReturnType<typeof sharingDesk>;
