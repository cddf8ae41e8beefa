import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { LinkedBatch } from '@/lib/records/batch/batch-links';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { DefinitionList } from '../page/definition-list';
import { Link } from '../page/link';
import { loadSiteWords } from '../sharing/site-words';

/** Where the units of a batch came from and where they went on, each end leading to the other. */
export async function BatchLinks({ page }: { page: BatchPage }) {
  const { sources, secondLives } = page;
  if (sources.length + secondLives.length === 0) return null;
  const t = await getTranslations('batches.facts');
  const siteWords = await loadSiteWords();
  const list = (links: readonly LinkedBatch[]) => (
    <ul className="plain-list">
      {links.map((link) => (
        <li key={link.id}>
          {link.visible ? <Link href={`/batches/${link.id}` as Route}>{link.code}</Link> : link.code}
          {link.code === null ? '' : ', '}
          {t('link', { units: link.units, site: siteWords(link.site) })}
        </li>
      ))}
    </ul>
  );
  return (
    <DefinitionList
      items={[
        ...(sources.length === 0 ? [] : [{ label: t('sources'), value: list(sources) }]),
        ...(secondLives.length === 0 ? [] : [{ label: t('secondLives'), value: list(secondLives) }]),
      ]}
    />
  );
}
