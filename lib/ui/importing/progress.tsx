'use client';

import { useRouter } from 'next/navigation';
import { useEffect, useState } from 'react';
import { formatNumber } from '../format/number-text';
import { fillPlaces } from '../quick/fill-places';

type Work = { readonly state: string; readonly done: number; readonly total: number };
type Props = {
  readonly id: string;
  readonly work: Work;
  readonly locale: string;
  /** Sentence with places for `done` and `total`. */
  readonly sentence: string;
};

const betweenLooksMs = 700;

function isWork(value: unknown): value is Work {
  return (
    typeof value === 'object' && value !== null && 'state' in value && 'done' in value && 'total' in value
  );
}

/** How far the work on a table is, asked for again and again. Without script the page loads itself anew. */
export function Progress({ id, work: first, locale, sentence }: Props) {
  const router = useRouter();
  const [work, setWork] = useState(first);
  useEffect(() => {
    let ended = false;
    const look = async () => {
      const answer = await fetch(`/api/import/${id}`, { cache: 'no-store' }).catch(() => undefined);
      const found: unknown = answer?.ok ? await answer.json() : undefined;
      if (ended) return;
      if (isWork(found)) {
        if (found.state !== first.state) return router.refresh();
        setWork(found);
      }
      timer = setTimeout(look, betweenLooksMs);
    };
    let timer = setTimeout(look, betweenLooksMs);
    return () => {
      ended = true;
      clearTimeout(timer);
    };
  }, [id, first.state, router]);
  const told = fillPlaces(sentence, {
    done: formatNumber(work.done, locale),
    total: formatNumber(work.total, locale),
  });
  return (
    <>
      <p role="status">{told}</p>
      {work.state === 'waiting' ? null : (
        <progress value={work.done} max={Math.max(1, work.total)} aria-label={told} />
      )}
      <noscript>
        <meta httpEquiv="refresh" content="2" />
      </noscript>
    </>
  );
}
