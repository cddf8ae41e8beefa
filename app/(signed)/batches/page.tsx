import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { queryToObject } from '@/lib/base/form-data';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { listBatches } from '@/lib/records/batch/list-batches.query';
import { listChoices } from '@/lib/records/network/list-choices.query';
import { listSiteNames } from '@/lib/records/site/list-site-names.query';
import { BatchFilterForm } from '@/lib/ui/batches/batch-filter-form';
import { BatchTable } from '@/lib/ui/batches/batch-table';
import { SaveRows } from '@/lib/ui/export/save-rows';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Pager } from '@/lib/ui/page/pager';
import { addressWith } from '@/lib/ui/table/address-with';

export default async function BatchesPage({ searchParams }: PageProps<'/batches'>) {
  const actor = await requireActor('coordinator', 'member');
  const address = await searchParams;
  const filter = batchFilterInput.parse(queryToObject(address));
  const { list, sites, choices } = await readAs(actor, async (context) => ({
    list: await listBatches(context, filter, new Date()),
    sites: await listSiteNames(context, filter.site),
    choices: await listChoices(context),
  }));
  const t = await getTranslations('batches');
  const filtered = Object.values(filter).some((value) => value !== null);
  const page = (changes: Record<string, string | undefined>) =>
    addressWith('/batches', address, { after: undefined, before: undefined, ...changes }) as Route;
  return (
    <>
      <Heading text={t('list.heading')} />
      <p>
        <ButtonLink href={'/batches/new' as Route}>{t('new')}</ButtonLink>
      </p>
      <BatchFilterForm
        filter={filter}
        address={address}
        sites={sites}
        species={choices.species.map(({ id, en, es }) => ({ id, en, es }))}
        methods={choices.methods}
        language={actor.language}
      />
      {list.batches.length === 0 ? (
        <EmptyState text={t(filtered ? 'list.nothing' : 'list.empty')} />
      ) : (
        <BatchTable batches={list.batches} language={actor.language} unit={actor.massUnit} />
      )}
      <SaveRows tables={['batches', 'findings', 'looks', 'losses', 'checks']} address={address} />
      <Pager
        newer={list.newer === undefined ? undefined : page({ before: list.newer })}
        older={list.older === undefined ? undefined : page({ after: list.older })}
      />
    </>
  );
}
