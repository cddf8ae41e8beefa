import type { Route } from 'next';
import type { NextPart, Outlook } from '@/lib/analysis/next-question/next-answer';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { ShortMethod } from '@/lib/analysis/treatment-question/short-methods';
import { Figure } from '../figure/figure';
import { DefinitionList } from '../page/definition-list';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';
import { NextCost } from './next-cost';
import type { NextReader } from './next-reader';
import { rowsBehind } from './rows-behind';
import { shortSentence } from './short-sentence';

const poundsInKilogram = 2.204_622_621_8;

type Props = {
  readonly outlook: Outlook;
  readonly part: NextPart;
  /** What the site's own runs say of it, where they mostly did not hold their window. */
  readonly short: ShortMethod | undefined;
  readonly reader: NextReader;
  /** Unfolded: the method that the answer is about. */
  readonly open: boolean;
  readonly words: InsightWords;
};

/** One method a site could use: whether it suits, what to expect, the site's own record, what it takes. */
export function NextOutlook({ outlook, part, short, reader, open, words }: Props) {
  const { t, names, view, number, units, language } = words;
  const { massUnit, volumeUnit } = reader;
  // The table itself and the rows behind a figure are a coordinator's pages.
  const coordinates = reader.role === 'coordinator';
  const { loss, yield: given, siteBatches, mixBatches, knownBatches } = outlook;
  const rows = (figure: ShownFigure) => rowsBehind(figure, coordinates);
  const unknown = loss.kind === 'cannot' && given.kind === 'cannot';
  return (
    <details open={open}>
      <summary>{names.methodName(outlook.methodId)}</summary>
      {short === undefined ? null : <p>{shortSentence(short, reader.temperatureUnit, words)}</p>}
      {unknown ? (
        <p>
          {loss.marks.includes('others-untold')
            ? t('next.thinUntold')
            : t('next.thin', { count: knownBatches })}
        </p>
      ) : (
        <div className="figures">
          <Figure label={t('next.columns.loss')} view={view(loss)} {...rows(loss)} />
          <Figure label={t('next.columns.yield')} view={view(given)} {...rows(given)} />
        </div>
      )}
      {outlook.units === null ? null : (
        <p>
          {t('next.lossUnits', {
            count: number(part.usualUnits),
            units,
            low: number(outlook.units.low),
            high: number(outlook.units.high),
          })}
        </p>
      )}
      <p>
        {t('next.own', { count: siteBatches })}{' '}
        {siteBatches === 0 ? '' : t('next.ownMix', { count: mixBatches })}
      </p>
      {mixBatches === 0 ? null : (
        <div className="figures">
          <Figure label={t('next.columns.ownLoss')} view={view(outlook.ownLoss)} {...rows(outlook.ownLoss)} />
          <Figure
            label={t('next.columns.ownYield')}
            view={view(outlook.ownYield)}
            {...rows(outlook.ownYield)}
          />
        </div>
      )}
      <DefinitionList
        items={[
          {
            label: t('next.suitsLabel'),
            value: (
              <>
                {[t(`next.suits.${outlook.verdict}`), ...outlook.reasons.map((one) => one[language])].join(
                  ' ',
                )}{' '}
                <span className="quiet">{t('next.suits.source')}</span>{' '}
                {coordinates ? (
                  <Link href={'/settings/suitability' as Route}>{t('next.suits.table')}</Link>
                ) : null}
              </>
            ),
          },
          {
            label: t('next.costLabel', { unit: massUnit }),
            value: (
              <NextCost
                cost={outlook.cost}
                volumeUnit={volumeUnit}
                perKilogram={massUnit === 'kg' ? 1 : poundsInKilogram}
                words={words}
              />
            ),
          },
        ]}
      />
    </details>
  );
}
