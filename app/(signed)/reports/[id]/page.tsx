import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getReport } from '@/lib/report/get-report.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { DefinitionList } from '@/lib/ui/page/definition-list';
import { Heading } from '@/lib/ui/page/heading';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { AmountTable } from '@/lib/ui/report/amount-table';
import { MethodTable } from '@/lib/ui/report/method-table';
import { publishReportAction } from '../actions';

export default async function ReportPage({ params }: PageProps<'/reports/[id]'>) {
  const { id } = await params;
  const actor = await requireActor();
  const report = /^[0-9a-f-]{36}$/i.test(id)
    ? await readAs(actor, (context) => getReport(context, id))
    : undefined;
  if (!report) return <NotThere />;
  const { content } = report;
  const t = await getTranslations('report');
  const locale = await getLocale();
  const period = { from: formatDate(content.from, locale), to: formatDate(content.to, locale) };
  const rule = { sites: content.rule.minSites, percent: content.rule.topTwoPercent };
  return (
    <article className="report">
      <Heading text={report.title} />
      <p className="lead">{t('scope', { network: content.networkName, ...period })}</p>
      {report.published ? null : (
        <Notice tone="watch">
          <p>{t('draftNote')}</p>
          <form action={publishReportAction}>
            <input type="hidden" name="id" value={id} />
            <button type="submit" className="button button-action">
              {t('publish')}
            </button>
          </form>
        </Notice>
      )}
      <DefinitionList
        items={[
          { label: t('sitesActive'), value: content.sitesActive },
          { label: t('peopleActive'), value: content.peopleActive },
          { label: t('batchesStarted'), value: content.batchesStarted },
        ]}
      />
      <h2>{t('harvestHeading')}</h2>
      <p>{t('harvestNote', period)}</p>
      <AmountTable
        caption={t('harvestCaption')}
        table={content.harvest}
        names="destination"
        massUnit={actor.massUnit}
        assumed={[]}
      />
      <h2>{t('residuesHeading')}</h2>
      <p>{t('residuesNote', { ...period, without: content.batchesWithoutDryMass })}</p>
      <AmountTable
        caption={t('residuesCaption')}
        table={content.residues}
        names="materialKind"
        massUnit={actor.massUnit}
        assumed={content.assumedResidues}
      />
      <h2>{t('methodsHeading')}</h2>
      <p>{t('methodsNote', period)}</p>
      <MethodTable
        rows={content.methods}
        language={actor.language}
        timeZone={actor.networkTimeZone}
        massUnit={actor.massUnit}
      />
      <h2>{t('howHeading')}</h2>
      <p>{t('howIntervals')}</p>
      <p>{t('howProtected', rule)}</p>
      <p className="quiet">
        {t('asOf', { date: formatInstant(new Date(content.builtAt), actor.networkTimeZone, locale) })}
      </p>
    </article>
  );
}
