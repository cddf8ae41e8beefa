import { getLocale, getTranslations } from 'next-intl/server';
import type { TrialSize } from '@/lib/analysis/trials/trial-size';
import { roundOn } from '@/lib/growing/trial-round';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import { formatDate } from '../format/date-text';
import { formatNumber } from '../format/number-text';
import { DataTable } from '../table/data-table';

/** Each number up to one more than it takes, so that none seems left out; in steps where it takes many. */
function shownBlocks(needed: number | null, chosen: number | null): number[] {
  const most = Math.max(needed ?? 0, chosen ?? 0, 3) + 1;
  const every = Math.ceil(most / 10);
  const all = Array.from({ length: most }, (_, at) => at + 1);
  return all.filter((count) => count % every === 0 || count === 1 || count === needed || count === chosen);
}

type Props = {
  readonly trial: TrialView;
  readonly size: TrialSize;
  readonly settle: (data: FormData) => Promise<void>;
};

/** How many runs a planned trial takes, what the number chosen gives, and what both rest on. */
export async function SizeView({ trial, size, settle }: Props) {
  const t = await getTranslations('trials.size');
  const locale = await getLocale();
  const { blocks, unitsPerRun } = trial;
  const needed = size.blocksNeeded;
  const armsAndSites = trial.arms.length * trial.sites.length;
  const number = (value: number, digits = 0) => formatNumber(value, locale, digits);
  const difference = number(trial.differencePoints, Number.isInteger(trial.differencePoints) ? 0 : 1);
  const power = (count: number) => number(Math.min(99.9, size.powerOf(count)), 0);
  const spread = number(size.runSpreadPoints, 1);
  const shown = shownBlocks(needed, blocks);
  return (
    <>
      <p className="answer-sentence">
        {needed === null
          ? t('never', { difference })
          : t('needs', {
              blocks: needed,
              sites: trial.sites.length,
              runs: needed * armsAndSites,
              units: needed * armsAndSites * unitsPerRun,
              difference,
              power: power(needed),
            })}
      </p>
      {blocks === null || blocks === needed ? null : <p>{t('chosen', { blocks, power: power(blocks) })}</p>}
      <p>
        {size.designEffect === null
          ? t('whyYield', { spread })
          : t('why', { units: unitsPerRun, effective: number(unitsPerRun / size.designEffect, 1), spread })}
      </p>
      {needed === null || needed === blocks ? null : (
        <form action={settle}>
          <input type="hidden" name="id" value={trial.id} />
          <input type="hidden" name="revision" value={trial.revision} />
          <input type="hidden" name="blocks" value={needed} />
          <button type="submit" className={`button ${blocks === null ? 'button-action' : 'button-plain'}`}>
            {t('take', { blocks: needed })}
          </button>
        </form>
      )}
      <DataTable
        caption={t('caption')}
        rows={shown}
        rowKey={String}
        columns={[
          { key: 'blocks', header: t('columns.blocks'), narrow: true, cell: (count) => number(count) },
          {
            key: 'runs',
            header: t('columns.runs'),
            numeric: true,
            cell: (count) => number(count * armsAndSites),
          },
          {
            key: 'units',
            header: t('columns.units'),
            numeric: true,
            cell: (count) => number(count * armsAndSites * unitsPerRun),
          },
          {
            key: 'until',
            header: t('columns.until'),
            cell: (count) => formatDate(roundOn(trial, count), locale),
          },
          { key: 'power', header: t('columns.power'), numeric: true, cell: power },
        ]}
      />
      <p className="quiet">{t('source')}</p>
    </>
  );
}
