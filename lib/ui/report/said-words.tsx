/** The coordinator's own words, paragraph by paragraph. */
export function SaidWords({ words }: { words: string }) {
  return (
    <div className="report-words">
      {words.split(/\n{2,}/).map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
    </div>
  );
}
