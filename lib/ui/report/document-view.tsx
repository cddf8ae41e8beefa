import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import type { DocumentSection, DocumentStory, ReportDocument } from '@/lib/report/document/report-document';
import { DefinitionList } from '../page/definition-list';
import { Heading } from '../page/heading';
import { ReportTable } from './document-table';

type Props = {
  readonly document: ReportDocument;
  /** The address of a story's picture. */
  readonly pictureAt: (storyId: string) => string;
  /** What stands between the title and the report: notices and buttons of whoever may do something. */
  readonly children?: ReactNode;
};

function Said({ words }: { words: string }) {
  return (
    <div className="report-words">
      {words.split(/\n{2,}/).map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
    </div>
  );
}

function Story({ story, src }: { story: DocumentStory; src: string }) {
  const { picture } = story;
  return (
    <section className="report-story">
      <h3>{story.title}</h3>
      {picture === undefined ? null : (
        <picture>
          <img src={src} alt={picture.alt} width={picture.widthPx} height={picture.heightPx} loading="lazy" />
        </picture>
      )}
      <Said words={story.words} />
    </section>
  );
}

function Section({
  section,
  how,
  pictureAt,
}: {
  section: DocumentSection;
  how: string;
  pictureAt: Props['pictureAt'];
}) {
  return (
    <section>
      <h2>{section.heading}</h2>
      {section.words === undefined ? null : <Said words={section.words} />}
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
        <Story key={story.id} story={story} src={pictureAt(story.id)} />
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
export async function DocumentView({ document, pictureAt, children }: Props) {
  const t = await getTranslations('common.figure');
  return (
    <article className="report" lang={document.language}>
      <Heading text={document.title} />
      <p className="lead">{document.lead}</p>
      <p className="quiet">{document.standing}</p>
      {children}
      {document.sections.map((section) => (
        <Section key={section.key} section={section} how={t('howComputed')} pictureAt={pictureAt} />
      ))}
      {document.colophon.map((line) => (
        <p key={line} className="quiet">
          {line}
        </p>
      ))}
    </article>
  );
}
