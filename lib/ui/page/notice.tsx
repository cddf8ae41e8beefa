import type { ReactNode } from 'react';

type Props = { readonly tone?: 'good' | 'watch' | 'bad'; readonly children: ReactNode };

/** A sentence about what just happened; announced without taking the focus. */
export function Notice({ tone = 'good', children }: Props) {
  return (
    <div className={`notice notice-${tone}`} role="status">
      {children}
    </div>
  );
}
