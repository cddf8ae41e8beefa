import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getTrialResult } from '@/lib/report/trial/get-trial-result.query';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { ResultView } from '@/lib/ui/trials/result-view';
import { showTrialResultAction } from '../../actions';

export default async function TrialResultPage({ params }: PageProps<'/trials/[id]/result'>) {
  const { id } = await params;
  const actor = await requireActor();
  const result = isId(id) ? await readAs(actor, (context) => getTrialResult(context, id)) : undefined;
  if (!result) return <NotThere />;
  const t = await getTranslations('trials.result');
  const locale = await getLocale();
  const when = formatInstant(new Date(result.publishedAt), actor.networkTimeZone, locale);
  return (
    <article className="report">
      <Heading text={t('heading', { title: result.content.title })} />
      <p className="lead">{result.content.question}</p>
      <ResultView content={result.content} actor={actor} />
      <p className="quiet">{t('publishedOn', { when })}</p>
      {actor.role === 'coordinator' ? (
        <div className="no-print">
          <p>{t(result.shownToFunders ? 'shown' : 'notShown')}</p>
          {result.shownToFunders ? null : (
            <form action={showTrialResultAction}>
              <input type="hidden" name="id" value={id} />
              <button type="submit" className="button button-action">
                {t('show')}
              </button>
            </form>
          )}
        </div>
      ) : null}
    </article>
  );
}
