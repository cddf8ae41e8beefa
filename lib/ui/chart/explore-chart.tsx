'use client';

import { lazy, Suspense, useEffect, useState } from 'react';
import type { ChartRow } from './chart-row';

const ExplorePlot = lazy(async () => ({ default: (await import('./explore-plot')).ExplorePlot }));

type Props = {
  readonly rows: readonly ChartRow[];
  readonly unit: string;
  readonly label: string;
  readonly loading: string;
};

/**
 * Exploring a chart by hand, for those whose browser runs scripts: nothing is drawn, fetched or announced before it
 * is opened. It repeats the server's chart and adds no number to it.
 */
export function ExploreChart({ rows, unit, label, loading }: Props) {
  const [scripted, setScripted] = useState(false);
  const [open, setOpen] = useState(false);
  useEffect(() => setScripted(true), []);
  if (!scripted) return null;
  return (
    <details className="no-print" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{label}</summary>
      {open ? (
        <Suspense fallback={<p role="status">{loading}</p>}>
          <ExplorePlot rows={rows} unit={unit} />
        </Suspense>
      ) : null}
    </details>
  );
}
