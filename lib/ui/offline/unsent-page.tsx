'use client';

import { useEffect, useState } from 'react';
import { lastSnapshot } from '@/lib/offline/keep-snapshot';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import type { OfflineWords } from './offline-words';
import { UnsentList } from './unsent-list';
import { useOutbox } from './use-outbox';

type Props = { readonly personId: string; readonly networkId: string; readonly words: OfflineWords };

/** The page of what this phone has not sent, on a page from the server. */
export function UnsentPage({ personId, networkId, words }: Props) {
  const outbox = useOutbox(personId, networkId);
  const [snapshot, setSnapshot] = useState<ShedSnapshot>();
  useEffect(() => {
    void lastSnapshot().then((kept) => {
      if (kept?.personId === personId) setSnapshot(kept.snapshot);
    });
  }, [personId]);
  return <UnsentList outbox={outbox} personId={personId} snapshot={snapshot} words={words} />;
}
