import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { TrialSize } from '@/lib/analysis/trials/trial-size';
import { roundOn } from '@/lib/growing/trial-round';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { SizeView } from './size-view';

type Props = {
  readonly trial: TrialView;
  readonly size: TrialSize;
  readonly start: (data: FormData) => Promise<void>;
  readonly settle: (data: FormData) => Promise<void>;
};

/** A plan that can still be changed: how many runs it takes, and the step that closes it. */
export async function DraftSection({ trial, size, start, settle }: Props) {
  const t = await getTranslations('trials');
  const locale = await getLocale();
  return (
    <>
      <SizeView trial={trial} size={size} settle={settle} />
      <p className="record-links">
        <Link href={`/trials/${trial.id}/correct` as Route}>{t('correct')}</Link>{' '}
        <Link href={`/void/trial/${trial.id}?back=/trials` as Route}>{t('discard')}</Link>
      </p>
      <h2>{t('start.heading')}</h2>
      {trial.blocks === null ? (
        <p>{t('start.sizeFirst')}</p>
      ) : (
        <form action={start}>
          <p>
            {t('start.until', {
              rounds: trial.blocks,
              first: formatDate(roundOn(trial, 1), locale),
              last: formatDate(roundOn(trial, trial.blocks), locale),
            })}{' '}
            {t('start.text')}
          </p>
          <input type="hidden" name="id" value={trial.id} />
          <button type="submit" className="button button-action">
            {t('start.submit')}
          </button>
        </form>
      )}
    </>
  );
}
