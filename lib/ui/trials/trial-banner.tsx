import { getTranslations } from 'next-intl/server';
import type { NextRun } from '@/lib/records/trial/list-next-runs.query';
import { Link } from '../page/link';
import { Notice } from '../page/notice';
import { startAddress } from './start-address';

type Props = {
  /** The run that this batch is made for. */
  readonly drawn: NextRun | undefined;
  /** What is drawn next at the sites of the reader. */
  readonly runs: readonly NextRun[];
};

/** More lines than a phone shows would hide the form. */
const mostShown = 3;

/** Tells whoever starts a batch what a running trial has drawn, or for which run this batch is. */
export async function TrialBanner({ drawn, runs }: Props) {
  const t = await getTranslations('trials.next');
  if (drawn !== undefined)
    return (
      <Notice>
        <p>{t('banner', { title: drawn.title, arm: drawn.arm, site: drawn.siteName })}</p>
      </Notice>
    );
  return runs.slice(0, mostShown).map((run) => (
    <p key={run.slotId}>
      {t('inTrial', { title: run.title, site: run.siteName, arm: run.arm })}{' '}
      <Link href={startAddress(run)}>
        {t('batch')}
        <span className="visually-hidden">{`: ${run.arm}, ${run.siteName}`}</span>
      </Link>
    </p>
  ));
}
