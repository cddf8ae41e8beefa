/** What the reader must know about the rows behind a figure: each a sentence, led by the same sign as in tables. */
export function FigureMarks({ marks }: { marks: readonly string[] }) {
  if (marks.length === 0) return null;
  return (
    <ul className="figure-marks">
      {marks.map((mark) => (
        <li key={mark}>{mark}</li>
      ))}
    </ul>
  );
}
