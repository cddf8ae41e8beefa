import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { dateInZone } from '@/lib/growing/calendar-date';
import type { StoryEntry } from '@/lib/records/batch/batch-story';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { Timeline, type TimelineEntry } from '../page/timeline';
import { loadEntryWords } from './story-entry';

type Props = { readonly page: BatchPage; readonly language: Language; readonly unit: MassUnit };

/** Where an entry is corrected and voided; entries of the batch itself and of weighings have pages of their own. */
function addressesOf(entry: StoryEntry, batchId: string): { correct: string; void: string } | undefined {
  const folder = { look: 'looks', finding: 'findings', loss: 'losses', check: 'checks' } as const;
  if (entry.kind === 'inoculated' || entry.kind === 'closed') return undefined;
  if (entry.kind === 'weighing')
    return {
      correct: `/weighings/${entry.id}/correct`,
      void: `/void/weighing/${entry.id}?back=/batches/${batchId}`,
    };
  return {
    correct: `/batches/${batchId}/${folder[entry.kind]}/${entry.id}/correct`,
    void: `/void/${entry.kind}/${entry.id}?back=/batches/${batchId}`,
  };
}

/** Everything that happened to a batch, in order, with what was taken back struck through. */
export async function BatchStory({ page, language, unit }: Props) {
  const t = await getTranslations('batches.story');
  const common = await getTranslations('common');
  const locale = await getLocale();
  const { batch, names } = page;
  const { told, followUp } = await loadEntryWords({
    ...{ language, unit },
    container: batch.containerKind,
    secondLife: batch.secondLife,
  });
  const by = (id: string | null) => (id === null ? '' : t('by', { name: names[id] ?? t('someone') }));

  const entryLine = (entry: StoryEntry): TimelineEntry => {
    const { title, lines } = told(entry);
    const addresses = addressesOf(entry, batch.id);
    const counts = entry.voidReason === null && batch.voidReason === null;
    return {
      key: `${entry.kind} ${entry.id}`,
      dateTime: entry.on,
      when: [formatDate(entry.on, locale), by(entry.byId)].filter((part) => part !== '').join(', '),
      title,
      voided: entry.voidReason !== null,
      detail: (
        <>
          {lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {entry.note === null ? null : <p>{entry.note}</p>}
          {entry.voidReason === null ? null : <p>{t('voided', { reason: entry.voidReason })}</p>}
          {entry.kind === 'finding' && entry.followUps.length > 0 ? (
            <ul>
              {entry.followUps.map((one) => (
                <li key={one.id}>
                  {one.voidReason === null ? (
                    <>
                      {followUp(one)}
                      {one.note === null ? '' : `. ${one.note}`}
                      <span className="record-links">
                        <Link href={`/batches/${batch.id}/follow-ups/${one.id}/correct` as Route}>
                          {common('correct')}
                        </Link>{' '}
                        <Link href={`/void/finding-follow-up/${one.id}?back=/batches/${batch.id}` as Route}>
                          {common('void')}
                        </Link>
                      </span>
                    </>
                  ) : (
                    <s>{followUp(one)}</s>
                  )}
                </li>
              ))}
            </ul>
          ) : null}
          {counts && addresses !== undefined ? (
            <p className="record-links">
              {entry.kind === 'finding' ? (
                <>
                  <Link href={`/batches/${batch.id}/findings/${entry.id}/follow-up` as Route}>
                    {t('followUpLink')}
                  </Link>{' '}
                </>
              ) : null}
              <Link href={addresses.correct as Route}>{common('correct')}</Link>{' '}
              <Link href={addresses.void as Route}>{common('void')}</Link>
            </p>
          ) : null}
        </>
      ),
    };
  };

  const corrections = page.corrections.map(({ id, at, byId, reason }): TimelineEntry => {
    const on = dateInZone(new Date(at), batch.timeZone);
    return {
      key: id,
      dateTime: on,
      when: `${formatDate(on, locale)}, ${by(byId)}`,
      title: t('correction', { reason }),
    };
  });
  const entries = [...page.story.map(entryLine), ...corrections];
  return <Timeline entries={entries.sort((one, other) => one.dateTime.localeCompare(other.dateTime))} />;
}
