import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSuitability } from '@/lib/records/settings/list-suitability.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { SuitabilityOverview } from '@/lib/ui/settings/suitability-overview';
import { SuitabilityTable } from '@/lib/ui/settings/suitability-table';

export default async function SuitabilityPage({ searchParams }: PageProps<'/settings/suitability'>) {
  const actor = await requireActor('coordinator');
  const asked = (await searchParams).species;
  const list = await readAs(actor, listSuitability);
  const t = await getTranslations('settings.suitability');
  const { language } = actor;
  const species = list.species.find((one) => one.id === asked);
  const rows = list.rows.filter((row) => row.speciesId === (species?.id ?? null));
  return (
    <>
      <Heading
        text={species === undefined ? t('heading') : t('headingOne', { species: species[language] })}
      />
      <p>{t('intro')}</p>
      {species === undefined ? <SuitabilityOverview list={list} language={language} /> : null}
      <SuitabilityTable
        list={list}
        caption={t(species === undefined ? 'pairs' : 'ofSpecies')}
        rows={rows}
        language={language}
      />
      <p>
        <ButtonLink
          href={
            `/settings/suitability/new${species === undefined ? '' : `?speciesId=${species.id}`}` as Route
          }
          plain
        >
          {t('add')}
        </ButtonLink>
      </p>
      <p>
        {species === undefined ? (
          <Link href="/settings">{t('back')}</Link>
        ) : (
          <Link href={'/settings/suitability' as Route}>{t('all')}</Link>
        )}
      </p>
    </>
  );
}
