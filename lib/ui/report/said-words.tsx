import { paragraphsOf } from '@/lib/base/paragraphs-of';

type Props = {
  readonly words: string;
  /** Whose words they are, where they stand beside figures. */
  readonly label?: string;
};

/** The coordinator's own words, paragraph by paragraph; beside figures set apart and headed as such. */
export function SaidWords({ words, label }: Props) {
  const paragraphs = paragraphsOf(words).map((paragraph) => <p key={paragraph}>{paragraph}</p>);
  if (label === undefined) return <>{paragraphs}</>;
  return (
    <blockquote className="said-words">
      <p className="said-words-label">{label}</p>
      {paragraphs}
    </blockquote>
  );
}
