import type { DocumentStory } from '@/lib/report/document/report-document';
import { SaidWords } from './said-words';

type Props = {
  readonly story: DocumentStory;
  /** The address of its picture. */
  readonly src: string;
  readonly level: 2 | 3;
};

/** A story of a report, or that it or its picture was taken out. */
export function ReportStorySection({ story, src, level }: Props) {
  const { picture, withdrawal, words, title } = story;
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <section className="report-story">
      <Title>{title}</Title>
      {picture === undefined ? null : (
        <picture className="mb-3 block">
          <img src={src} alt={picture.alt} width={picture.widthPx} height={picture.heightPx} loading="lazy" />
        </picture>
      )}
      {withdrawal === undefined ? null : <p className="quiet">{withdrawal}</p>}
      {words === '' ? null : <SaidWords words={words} />}
    </section>
  );
}
