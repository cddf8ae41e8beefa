'use client';

import { useEffect, useState } from 'react';
import { newId } from '@/lib/base/new-id';
import { readerLocale } from '@/lib/base/reader-locale';
import { lastSnapshot } from '@/lib/offline/keep-snapshot';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { fillPlaces } from '../quick/fill-places';
import { QuickCheck } from '../quick/quick-check';
import { QuickContamination } from '../quick/quick-contamination';
import { QuickHarvest } from '../quick/quick-harvest';
import type { QuickProps } from '../quick/quick-props';
import { withOutbox } from '../quick/with-outbox';
import { counted, type OfflineWords } from './offline-words';
import { batchFacts, ShellEntries, ShellToday } from './shell-today';
import { UnsentList } from './unsent-list';
import { useOutbox } from './use-outbox';

type Words = Readonly<Record<'en' | 'es', OfflineWords>>;

/** Where the person wanted to go, as the worker put it into the address. */
function wantedAddress(): URL {
  const at = new URLSearchParams(location.search).get('at') ?? '/today';
  const wanted = new URL(at, location.origin);
  return wanted.origin === location.origin ? wanted : new URL('/today', location.origin);
}

const quickForms = {
  '/quick/harvest': QuickHarvest,
  '/quick/contamination': QuickContamination,
  '/quick/check': QuickCheck,
} as const;

/** The words with figures written and read as the person's own region has them. */
function inRegion({ keep, quick }: OfflineWords, locale: string): OfflineWords {
  return { keep: { ...keep, locale }, quick: { ...quick, form: { ...quick.form, locale } } };
}

type Known = { readonly snapshot: ShedSnapshot | undefined; readonly wanted: URL };

/**
 * The one page that a phone can open with no signal. It holds nothing personal itself: who, which batches and what is due
 * come from the phone's own store.
 */
export function OfflineShell({ words: all, product }: { words: Words; product: string }) {
  const [known, setKnown] = useState<Known>();
  useEffect(() => {
    const wanted = wantedAddress();
    void lastSnapshot().then(
      (kept) => setKnown({ snapshot: kept?.snapshot, wanted }),
      () => setKnown({ snapshot: undefined, wanted }),
    );
  }, []);
  useEffect(() => {
    if (known?.snapshot) document.documentElement.lang = known.snapshot.person.language;
  }, [known]);
  const fallback = all.en.keep;
  if (!known) return <p role="status">{fallback.list.loading}</p>;
  const { snapshot, wanted } = known;
  if (!snapshot)
    return (
      <>
        <h1>{fallback.shell.heading}</h1>
        <p>{fallback.shell.nothing}</p>
        <p lang="es">{all.es.keep.shell.nothing}</p>
      </>
    );
  const words = inRegion(all[snapshot.person.language], readerLocale(snapshot.person));
  return <ShellOf snapshot={snapshot} wanted={wanted} words={words} product={product} />;
}

type ShellProps = {
  readonly snapshot: ShedSnapshot;
  readonly wanted: URL;
  readonly words: OfflineWords;
  readonly product: string;
};

function ShellOf({ snapshot, wanted, words, product }: ShellProps) {
  const { person, network } = snapshot;
  const outbox = useOutbox(person.id, network.id);
  const [unsent, setUnsent] = useState(0);
  useEffect(() => outbox?.follow((summary) => setUnsent(summary.unsent)), [outbox]);
  const { shell, status } = words.keep;
  const asOf = new Date(snapshot.takenAt).toLocaleString(words.keep.locale, {
    day: 'numeric',
    month: 'short',
    hour: 'numeric',
    minute: '2-digit',
  });
  return (
    <>
      <div className="notice notice-watch">
        <p>
          <strong>{shell.heading}.</strong> {shell.intro}
        </p>
        <p className="quiet">{fillPlaces(shell.asOf, { when: asOf })}</p>
        <p role="status">{unsent === 0 ? '' : <a href="/unsent">{counted(status.unsent, unsent)}</a>}</p>
        <p className="chips">
          <a href={`${wanted.pathname}${wanted.search}`}>{shell.again}</a>
          <a href="/today">{shell.home}</a>
        </p>
      </div>
      <ShellBody snapshot={snapshot} wanted={wanted} words={words} outbox={outbox} product={product} />
    </>
  );
}

function ShellBody({
  snapshot,
  wanted,
  words,
  outbox,
  product,
}: ShellProps & { readonly outbox: ReturnType<typeof useOutbox> }) {
  const [firstId] = useState(newId);
  const { person } = snapshot;
  const { shell, list } = words.keep;
  const Form = Object.entries(quickForms).find(([path]) => path === wanted.pathname)?.[1];
  const batchId = wanted.searchParams.get('batch') ?? undefined;
  if (Form) {
    if (!outbox) return <p role="status">{list.broken}</p>;
    const props: QuickProps = {
      snapshot,
      words: words.quick,
      now: new Date().toISOString(),
      firstId,
      ...withOutbox(outbox.quick, words.quick),
      ...(batchId === undefined ? {} : { batchId }),
    };
    return <Form {...props} />;
  }
  const title = (text: string) => (
    <>
      <title>{`${text} – ${product}`}</title>
      <h1>{text}</h1>
    </>
  );
  if (wanted.pathname === '/unsent')
    return (
      <>
        {title(list.heading)}
        <UnsentList outbox={outbox} personId={person.id} snapshot={snapshot} words={words} />
      </>
    );
  const batch = snapshot.batches.find(({ id }) => wanted.pathname === `/batches/${id}`);
  if (batch)
    return (
      <>
        {title(batch.code)}
        <p>{batchFacts(batch, snapshot, words)}</p>
        <ShellEntries words={words} batchId={batch.id} />
      </>
    );
  return (
    <>
      {title(shell.home)}
      {['/', '/today'].includes(wanted.pathname) ? null : <p>{shell.needsSignal}</p>}
      <ShellToday snapshot={snapshot} words={words} />
    </>
  );
}
