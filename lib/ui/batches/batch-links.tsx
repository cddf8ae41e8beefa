import type { Route } from 'next';
import Link from 'next/link';
import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { LinkedBatch } from '@/lib/records/batch/batch-links';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { DefinitionList } from '../page/definition-list';

/** Where the units of a batch came from or went on, with the yields apart and together. */
export async function BatchLinks({ page, unit }: { page: BatchPage; unit: MassUnit }) {
  const { sources, secondLives, figures } = page;
  if (sources.length + secondLives.length === 0) return null;
  const t = await getTranslations('batches.facts');
  const locale = await getLocale();
  const mass = (grams: number) => formatMass(grams, unit, locale);
  const list = (links: readonly LinkedBatch[]) => (
    <ul className="plain-list">
      {links.map((link) => (
        <li key={link.id}>
          {link.code === null ? (
            t('elsewhere')
          ) : (
            <Link href={`/batches/${link.id}` as Route}>{link.code}</Link>
          )}
          {`, ${t('link', { units: link.units })}`}
        </li>
      ))}
    </ul>
  );
  const there = [...sources, ...secondLives].reduce((sum, { freshGrams }) => sum + freshGrams, 0);
  const total = figures.freshGrams + there;
  return (
    <DefinitionList
      items={[
        ...(sources.length === 0 ? [] : [{ label: t('sources'), value: list(sources) }]),
        ...(secondLives.length === 0 ? [] : [{ label: t('secondLives'), value: list(secondLives) }]),
        {
          label: t('together'),
          value: t('togetherValue', {
            own: mass(figures.freshGrams),
            other: mass(there),
            total: mass(total),
          }),
        },
      ]}
    />
  );
}
