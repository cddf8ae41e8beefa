import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { askNext } from '@/lib/analysis/next-question/next-question';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { NextOverview } from '@/lib/ui/insight/next-overview';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { loadQuestion } from '../load-question';

/** For a coordinator: every site with what it grows most. */
export async function AllNext({ actor, choosing }: { readonly actor: Actor; readonly choosing: boolean }) {
  const { known } = await loadQuestion(Promise.resolve({}), askNext);
  const t = await getTranslations('insight');
  const heading = <Heading text={t('next.allHeading')} />;
  if (!known)
    return (
      <>
        {heading}
        <EmptyState text={t('fit.empty')} />
      </>
    );
  const words = await insightWords(actor, known.scope);
  return (
    <>
      {heading}
      {choosing ? <p>{t('next.siteFirst')}</p> : null}
      <FittedBlock answer={known.answer} timeZone={actor.networkTimeZone}>
        {(result) => <NextOverview answer={result} words={words} />}
      </FittedBlock>
    </>
  );
}
