import { getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { TrialResultContent } from '@/lib/report/trial/trial-result-content';
import { Notice } from '../page/notice';
import { ResultView } from './result-view';

type Props = {
  readonly content: TrialResultContent;
  readonly actor: Actor;
  readonly trialId: string;
  readonly publish: (data: FormData) => Promise<void>;
};

/** The planned analysis of an ended trial as it would be published now. */
export async function PreviewSection({ content, actor, trialId, publish }: Props) {
  const t = await getTranslations('trials.result');
  return (
    <>
      <h2>{t('preview')}</h2>
      <ResultView content={content} actor={actor} />
      <Notice tone="watch">
        <p>{t('previewNote')}</p>
        <form action={publish}>
          <input type="hidden" name="id" value={trialId} />
          <button type="submit" className="button button-action">
            {t('publish')}
          </button>
        </form>
      </Notice>
    </>
  );
}
