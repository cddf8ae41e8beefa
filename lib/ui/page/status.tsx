export type StatusTone = 'good' | 'watch' | 'bad' | 'plain';

const shapes: Readonly<Record<StatusTone, string>> = {
  good: 'M2 7.5 6 11.5 12 3',
  watch: 'M7 2 12.5 12H1.5Z',
  bad: 'M2.5 2.5 11.5 11.5M11.5 2.5 2.5 11.5',
  plain: 'M2.5 7H11.5',
};

/** A state as word and shape; the colour only repeats it. */
export function Status({ tone, word }: { tone: StatusTone; word: string }) {
  return (
    <span className={`status status-${tone}`}>
      <svg width="14" height="14" viewBox="0 0 14 14" aria-hidden="true">
        <path d={shapes[tone]} fill="none" stroke="currentColor" strokeWidth="2" />
      </svg>
      {word}
    </span>
  );
}
