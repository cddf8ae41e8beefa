import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { loadDocument } from '@/lib/ui/report/load-document';
import { ReportStorySection } from '@/lib/ui/report/report-story-section';
import { loadCoordinatorsReport } from '../load-coordinators-report';
import { dropStoryAction } from './actions';

/** A report is read in one go. */
const mostStories = 3;

export default async function StoriesPage({ params }: PageProps<'/reports/[id]/stories'>) {
  const { id } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  if (!report) return <NotThere />;
  const t = await getTranslations('stories');
  const draft = report.publishedAt === undefined;
  const address = `/reports/${id}/stories`;
  const { sections } = await loadDocument(actor, report);
  const told = sections.flatMap(({ stories }) => stories ?? []);
  const withdrawn = new Map(report.stories.map((story) => [story.id, story.withdrawn?.part]));
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">
        <Link href={`/reports/${id}`}>{report.title}</Link>
      </p>
      <p>{t('intro')}</p>
      {told.length === 0 ? <EmptyState text={t('none')} /> : null}
      {told.map((story) => (
        <div key={story.id}>
          <ReportStorySection story={story} src={`/reports/${id}/pictures/${story.id}`} level={2} />
          <div className="chips">
            {draft ? (
              <form action={dropStoryAction}>
                <input type="hidden" name="id" value={story.id} />
                <button type="submit" className="button button-plain">
                  {t('drop')}
                </button>
              </form>
            ) : null}
            {withdrawn.get(story.id) === 'story' ? null : (
              <Link href={`${address}/${story.id}/withdraw` as Route}>{t('withdrawLink')}</Link>
            )}
          </div>
        </div>
      ))}
      {draft && told.length < mostStories ? (
        <p>
          <ButtonLink href={`${address}/new` as Route}>{t('add')}</ButtonLink>
        </p>
      ) : null}
      <p>
        <Link href={`/reports/${id}`}>{t('backToReport')}</Link>
      </p>
    </>
  );
}
