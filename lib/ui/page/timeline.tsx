import type { ReactNode } from 'react';

export type TimelineEntry = {
  readonly key: string;
  /** Calendar date or instant for machines. */
  readonly dateTime: string;
  /** The same in the reader's writing. */
  readonly when: string;
  readonly title: string;
  readonly detail?: ReactNode;
  /** Taken back later: shown struck through, never hidden. */
  readonly voided?: boolean;
};

/** The story of a record, in the order given. */
export function Timeline({ entries }: { entries: readonly TimelineEntry[] }) {
  return (
    <ol className="timeline">
      {entries.map((entry) => (
        <li key={entry.key}>
          <time dateTime={entry.dateTime}>{entry.when}</time>
          <span className="timeline-title">{entry.voided ? <s>{entry.title}</s> : entry.title}</span>
          {entry.detail === undefined ? null : <div>{entry.detail}</div>}
        </li>
      ))}
    </ol>
  );
}
