import type { ReactNode } from 'react';

// Codes of batches, lots and treatments: "KHH-347", "S-PEARL-07", "T-FXK-34".
const code = /[A-Z0-9]+(?:-[A-Z0-9]+)+/;

function kept(text: string): ReactNode {
  const found = code.exec(text);
  if (found === null) return text;
  const [whole] = found;
  return (
    <>
      {text.slice(0, found.index)}
      <span className="whitespace-nowrap">{whole}</span>
      {kept(text.slice(found.index + whole.length))}
    </>
  );
}

/** A sentence in which no code is broken at its hyphens at the end of a line; one box, also inside a button. */
export function KeptCodes({ text }: { readonly text: string }) {
  return <span>{kept(text)}</span>;
}
