import type { Route } from 'next';
import Link from 'next/link';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { Heading } from '@/lib/ui/page/heading';

const parts = ['trainings', 'participants', 'sales', 'practices'] as const;

/** What a programme does beside growing, by kind of record. */
export default async function ProgrammePage() {
  await requireActor('coordinator', 'member');
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
    </>
  );
}
