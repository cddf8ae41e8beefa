// Codes of batches, lots and treatments: "KHH-347", "S-PEARL-07", "T-FXK-34".
const code = /[A-Z0-9]+(?:-[A-Z0-9]+)+/;

/** A sentence in which no code is broken at its hyphens at the end of a line. */
export function KeptCodes({ text }: { readonly text: string }) {
  const found = code.exec(text);
  if (found === null) return text;
  const [kept] = found;
  return (
    <>
      {text.slice(0, found.index)}
      <span className="whitespace-nowrap">{kept}</span>
      <KeptCodes text={text.slice(found.index + kept.length)} />
    </>
  );
}
