import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { ReportView } from '@/lib/report/get-report.query';
import { Link } from '../page/link';
import { Notice } from '../page/notice';

type Action = (data: FormData) => Promise<void>;

type Props = {
  readonly report: ReportView;
  readonly coordinates: boolean;
  /** Publishing was refused, since another report of the period was published after this one was built. */
  readonly late: boolean;
  readonly actions: { readonly revise: Action; readonly discard: Action };
};

function Send({ action, id, text }: { action: Action; id: string; text: string }) {
  return (
    <form action={action}>
      <input type="hidden" name="id" value={id} />
      <button type="submit" className="button">
        {text}
      </button>
    </form>
  );
}

async function Draft({ report, late, actions }: Omit<Props, 'coordinates'>) {
  const t = await getTranslations('report');
  return (
    <Notice tone="watch">
      <p>{t('draftNote')}</p>
      {late ? <p>{t('builtBefore')}</p> : null}
      <p>
        <Link href={`/reports/${report.id}/words` as Route}>{t('wordsLink')}</Link>
      </p>
      <p>
        <Link href={`/reports/${report.id}/stories` as Route}>{t('storyLink')}</Link>
      </p>
      <p>
        <Link href={`/reports/${report.id}/days` as Route}>{t('daysLink')}</Link>
      </p>
      {report.rebuilt ? (
        <p>
          <Link href={`/reports/${report.id}/rebuilt` as Route}>{t('rebuiltLink')}</Link>
        </p>
      ) : null}
      <div className="actions">
        <Link href={`/reports/${report.id}/publish` as Route} className="button button-action">
          {t('publish')}
        </Link>
        <Send action={actions.discard} id={report.id} text={t('discard')} />
      </div>
    </Notice>
  );
}

/** Where a report stands among its versions, and what may be done with it next; not printed. */
export async function ReportStanding({ report, coordinates, late, actions }: Props) {
  const t = await getTranslations('report');
  const { id, publishedAt, earlier, later } = report;
  return (
    <div className="no-print">
      {publishedAt === undefined ? <Draft report={report} late={late} actions={actions} /> : null}
      {later === undefined ? null : (
        <Notice tone="watch">
          <p>
            {later.published ? t('laterVersion') : t('laterDraft')}{' '}
            <Link href={`/reports/${later.id}` as Route}>{t('openLater', { version: later.version })}</Link>
          </p>
        </Notice>
      )}
      {earlier === undefined ? null : (
        <p>
          <Link href={`/reports/${earlier.id}` as Route}>{t('earlierVersion')}</Link>
        </p>
      )}
      {coordinates && publishedAt !== undefined ? (
        <>
          <p>
            <Link href={`/reports/${id}/changes` as Route}>{t('changesLink')}</Link>
          </p>
          <p>
            <Link href={`/reports/${id}/links` as Route}>{t('linkLink')}</Link>
          </p>
          {report.stories.length === 0 ? null : (
            <p>
              <Link href={`/reports/${id}/stories` as Route}>{t('storiesLink')}</Link>
            </p>
          )}
          {later === undefined ? (
            <>
              <Send action={actions.revise} id={id} text={t('newVersion')} />
              <p className="quiet">{t('newVersionNote')}</p>
            </>
          ) : null}
        </>
      ) : null}
    </div>
  );
}
