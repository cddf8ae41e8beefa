import { getLocale, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import type { DocumentSection, ReportDocument } from '@/lib/report/document/report-document';
import { DefinitionList } from '../page/definition-list';
import { Heading } from '../page/heading';
import { ReportTable } from './document-table';
import { ReportStorySection } from './report-story-section';
import { SaidWords } from './said-words';

type Props = {
  readonly document: ReportDocument;
  /** The address of a story's picture. */
  readonly pictureAt: (storyId: string) => string;
  /** The report's, where it is not the reader's own. */
  readonly locale?: string;
  /** What stands between the title and the report: notices and buttons of whoever may do something. */
  readonly children?: ReactNode;
};

function Section({
  section,
  how,
  wordsLabel,
  pictureAt,
}: {
  section: DocumentSection;
  how: string;
  wordsLabel: string;
  pictureAt: Props['pictureAt'];
}) {
  return (
    <section>
      <h2>{section.heading}</h2>
      {section.words === undefined ? null : <SaidWords words={section.words} label={wordsLabel} />}
      {section.paragraphs.map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
      {section.facts === undefined ? null : (
        <DefinitionList items={section.facts.map(({ label, text }) => ({ label, value: text }))} />
      )}
      {section.tables?.map((table) => (
        <ReportTable key={table.key} table={table} how={how} />
      ))}
      {section.stories?.map((story) => (
        <ReportStorySection key={story.id} story={story} src={pictureAt(story.id)} level={3} />
      ))}
      {section.notes?.map((note) => (
        <p key={note} className="quiet">
          {note}
        </p>
      ))}
    </section>
  );
}

/** A report as a page. */
export async function DocumentView({ document, pictureAt, locale, children }: Props) {
  const t = await getTranslations({ locale: locale ?? (await getLocale()), namespace: 'common.figure' });
  return (
    <article className="report" lang={document.language}>
      <Heading text={document.title} />
      <p className="lead">{document.lead}</p>
      <p className="quiet">{document.standing}</p>
      {children}
      {document.sections.map((section) => (
        <Section
          key={section.key}
          section={section}
          how={t('howComputed')}
          wordsLabel={document.wordsLabel}
          pictureAt={pictureAt}
        />
      ))}
      {document.colophon.map((line) => (
        <p key={line} className="quiet">
          {line}
        </p>
      ))}
    </article>
  );
}
