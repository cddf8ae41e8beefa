/** A short warning where the step is taken. The shape and the word say it, not the colour alone. */
export function Caution({ title, lines }: { title: string; lines: readonly string[] }) {
  return (
    <div className="caution" role="note">
      <p className="caution-title">
        <svg width="22" height="20" viewBox="0 0 22 20" aria-hidden="true">
          <path
            d="M11 1.5 21 18.5H1Z"
            fill="none"
            stroke="currentColor"
            strokeWidth="2"
            strokeLinejoin="round"
          />
          <path d="M11 7v5.5M11 14.8v1.6" stroke="currentColor" strokeWidth="2" />
        </svg>
        {title}
      </p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
