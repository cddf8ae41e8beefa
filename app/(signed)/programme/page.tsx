import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readProgramme } from '@/lib/analysis/programme/read-programme';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { ProgrammeYear } from '@/lib/ui/programme/programme-year';

const parts = ['trainings', 'participants', 'sales', 'practices'] as const;
const yearDays = 365;

/** What a programme does beside growing, by kind of record, and what a year of it amounts to. */
export default async function ProgrammePage() {
  const actor = await requireActor('coordinator', 'member');
  const to = todayInZone(actor.networkTimeZone, new Date());
  const period = { from: addDays(to, 1 - yearDays), to };
  const programme = await readAs(actor, (context) => readProgramme(context, period));
  const t = await getTranslations('programme');
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">{t('lead')}</p>
      {parts.map((part) => (
        <section key={part}>
          <h2>
            <Link href={`/programme/${part}` as Route}>{t(`${part}.heading`)}</Link>
          </h2>
          <p>{t(`${part}.note`)}</p>
        </section>
      ))}
      <ProgrammeYear programme={programme} period={period} massUnit={actor.massUnit} />
    </>
  );
}
