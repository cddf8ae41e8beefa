'use client';

import { useEffect, useState } from 'react';
import { type Outbox, outboxOf } from '@/lib/offline/keep-sending';

/** The outbox of this person on this phone; undefined while the page is not yet alive, and where none can be kept. */
export function useOutbox(personId: string, networkId: string): Outbox | undefined {
  const [outbox, setOutbox] = useState<Outbox>();
  useEffect(() => {
    if (!('indexedDB' in globalThis)) return;
    setOutbox(outboxOf(personId, networkId));
  }, [personId, networkId]);
  return outbox;
}
