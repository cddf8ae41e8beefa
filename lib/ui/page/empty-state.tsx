import type { ReactNode } from 'react';

type Props = { readonly text: string; readonly children?: ReactNode };

/** What a page says when there is nothing yet: why, and the first thing to do as its child. */
export function EmptyState({ text, children }: Props) {
  return (
    <div className="empty-state">
      <p>{text}</p>
      {children === undefined ? null : <p className="chips">{children}</p>}
    </div>
  );
}
