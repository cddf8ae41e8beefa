import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { SuitabilityLine, SuitabilityList } from '@/lib/records/settings/list-suitability.query';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import { suitabilityNames } from './suitability-words';

type Props = { readonly list: SuitabilityList; readonly language: Language };

/** One row per species: what suits it, what works with care, what does not suit it. */
export async function SuitabilityOverview({ list, language }: Props) {
  const t = await getTranslations('settings.suitability');
  const words = await getTranslations('vocabulary.suitabilityVerdict');
  const { subject } = await suitabilityNames(list, language);
  const named = (speciesId: string, verdict: SuitabilityLine['verdict']) =>
    list.rows
      .filter((row) => row.speciesId === speciesId && row.verdict === verdict)
      .map(subject)
      .join(', ') || '–';
  const column = (verdict: SuitabilityLine['verdict']) => ({
    key: verdict,
    header: words(verdict),
    cell: (row: { id: string }) => named(row.id, verdict),
  });
  const species = [...list.species].sort((a, b) => a[language].localeCompare(b[language], language));
  return (
    <DataTable
      caption={t('overview')}
      rows={species}
      rowKey={(row) => row.id}
      columns={[
        {
          key: 'species',
          header: t('columns.species'),
          cell: (row) => (
            <Link href={`/settings/suitability?species=${row.id}` as Route}>{row[language]}</Link>
          ),
        },
        column('suits'),
        column('possible'),
        column('unsuited'),
      ]}
    />
  );
}
