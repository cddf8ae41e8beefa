/** What the pointer rests on, in the same words as the table. */
export function ExploreTip({ point }: { point?: { label: string; text: string; size: string } | undefined }) {
  if (point === undefined) return null;
  return (
    <p className="sheet">
      <strong>{point.label}</strong>
      <br />
      {point.text} <span className="quiet">{point.size}</span>
    </p>
  );
}
