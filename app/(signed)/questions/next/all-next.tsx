import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import { askNext } from '@/lib/analysis/next-question/next-question';
import { FittedBlock } from '@/lib/ui/insight/fitted-block';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { NextOverview } from '@/lib/ui/insight/next-overview';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { loadQuestion } from '../load-question';

type Props = {
  readonly actor: Actor;
  readonly choosing: boolean;
  /** The address of the page, which names the page of a long list. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
};

/** For a coordinator: every site with what it grows most. */
export async function AllNext({ actor, choosing, address }: Props) {
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
        {(result) => <NextOverview answer={result} words={words} address={address} />}
      </FittedBlock>
    </>
  );
}
