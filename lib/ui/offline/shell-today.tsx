'use client';

import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { formatDayMonth } from '../format/date-text';
import { fillPlaces } from '../quick/fill-places';
import type { OfflineWords } from './offline-words';

type Props = { readonly snapshot: ShedSnapshot; readonly words: OfflineWords };

/** The three entries, large. */
export function ShellEntries({ words, batchId }: { words: OfflineWords; batchId?: string }) {
  const { shell } = words.keep;
  const of = batchId === undefined ? '' : `?batch=${batchId}`;
  return (
    <p className="chips">
      <a className="button button-action" href={`/quick/harvest${of}`}>
        {shell.harvest}
      </a>
      <a className="button button-plain" href={`/quick/contamination${of}`}>
        {shell.contamination}
      </a>
      <a className="button button-plain" href={`/quick/check${of}`}>
        {shell.check}
      </a>
    </p>
  );
}

export function batchFacts(batch: OpenBatch, snapshot: ShedSnapshot, { keep }: OfflineWords): string {
  const day = (date: string) => formatDayMonth(date, keep.locale);
  return [
    snapshot.person.language === 'es' ? batch.speciesEs : batch.speciesEn,
    fillPlaces(keep.shell.live, { live: batch.liveUnits, all: batch.unitCount }),
    fillPlaces(keep.shell.inoculated, { day: day(batch.inoculatedOn) }),
    ...(batch.lastPickedOn === null ? [] : [fillPlaces(keep.shell.picked, { day: day(batch.lastPickedOn) })]),
    batch.siteName,
  ].join(' · ');
}

/** What is due and which batches are open, as the phone knew last. */
export function ShellToday({ snapshot, words }: Props) {
  const { shell } = words.keep;
  return (
    <>
      <ShellEntries words={words} />
      {snapshot.due.length === 0 ? null : (
        <>
          <h2>{shell.due}</h2>
          <ul className="entries">
            {snapshot.due.map(({ text, place, when, href }) => (
              <li key={`${href} ${text}`}>
                <a href={href}>{text}</a>
                <p className="quiet">
                  {place} · {when}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
      <h2>{shell.batches}</h2>
      <ul className="entries">
        {snapshot.batches.map((batch) => (
          <li key={batch.id}>
            <a href={`/batches/${batch.id}`}>{batch.code}</a>
            <p className="quiet">{batchFacts(batch, snapshot, words)}</p>
          </li>
        ))}
      </ul>
    </>
  );
}
