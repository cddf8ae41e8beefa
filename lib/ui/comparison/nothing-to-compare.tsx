import { getTranslations } from 'next-intl/server';
import { ButtonLink } from '../page/button-link';
import { EmptyState } from '../page/empty-state';
import { Heading } from '../page/heading';

/** What a page of the comparison says while no batch is recorded. */
export async function NothingToCompare({ heading }: { readonly heading: string }) {
  const t = await getTranslations('comparison');
  return (
    <>
      <Heading text={heading} />
      <EmptyState text={t('empty')}>
        <ButtonLink href="/sites">{t('toSites')}</ButtonLink>
      </EmptyState>
    </>
  );
}
