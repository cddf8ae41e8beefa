import { getLocale, getTranslations } from 'next-intl/server';
import type { Actor } from '@/lib/access/actor';
import type { UsualRuns } from '@/lib/analysis/trials/read-usual-runs';
import { FigureHistory } from '../figure/figure-history';
import { loadFigureViews } from '../figure/load-figure-views';
import { formatNumber } from '../format/number-text';

type Props = {
  readonly usual: UsualRuns;
  readonly actor: Pick<Actor, 'language' | 'networkTimeZone' | 'massUnit'>;
};

/** What the network's own records say about how runs go, for whoever has to write down what to expect. */
export async function UsualRunsNote({ usual, actor }: Props) {
  const t = await getTranslations('trials.known');
  const figures = await getTranslations('figures');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const { lostPercent, likeness, likenessSites, bePercent, runSpreadPoints, container, drawn, weighed } =
    usual;
  if (lostPercent === null || likeness === null) return null;
  const loss = (await loadFigureViews(actor.networkTimeZone, actor.massUnit))(usual.loss);
  const given =
    bePercent === null || runSpreadPoints === null || container === 'bed' || container === 'log'
      ? undefined
      : { percent: formatNumber(bePercent, locale, 0), spread: formatNumber(runSpreadPoints, locale, 0) };
  const left = weighed.leftOut.map(({ reason, batches, units }) =>
    figures('leftOutLine', { batches, units, reason: figures(`leftOut.${reason}`) }),
  );
  return (
    <>
      <p>
        {t('contamination', {
          species: usual.species[actor.language],
          container: words(`containerKind.${container}`).toLowerCase(),
          percent: formatNumber(lostPercent, locale, 1),
          interval: loss.interval === '' ? 'none' : loss.interval,
          likeness: formatNumber(likeness, locale, 2),
        })}{' '}
        {given === undefined ? null : t('yield', given)}
      </p>
      {drawn === undefined ? null : <p>{t('drawn', drawn)}</p>}
      <FigureHistory view={loss} of={t('loss')} />
      <p className="quiet">
        {t('alike', { sites: likenessSites, untold: usual.loss.n.sites - likenessSites })}{' '}
        {given === undefined
          ? null
          : t('weighed', { batches: weighed.n.batches, left: left.length === 0 ? 'none' : left.join('; ') })}
      </p>
    </>
  );
}
