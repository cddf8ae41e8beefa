import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { formatDayMonth } from '../format/date-text';
import { fillPlaces } from './fill-places';
import type { QuickWords } from './quick-words';

/** Units in words: "12 bags". */
export function unitsText(count: number, container: OpenBatch['container'], words: QuickWords): string {
  const { one, other } = words.batch.units[container];
  return fillPlaces(count === 1 ? one : other, { count });
}

/** What tells one batch from the next beside its code: species, living units, site, when it was last picked. */
export function batchLine(
  batch: OpenBatch,
  words: QuickWords,
  person: ShedSnapshot['person'],
  sites: number,
): string {
  const date = (day: string) => formatDayMonth(day, words.form.locale);
  const when =
    batch.lastPickedOn === null
      ? fillPlaces(words.batch.inoculated, { day: date(batch.inoculatedOn) })
      : fillPlaces(words.batch.picked, { day: date(batch.lastPickedOn) });
  return [
    person.language === 'es' ? batch.speciesEs : batch.speciesEn,
    unitsText(batch.liveUnits, batch.container, words),
    ...(sites > 1 ? [batch.siteName] : []),
    when,
  ].join(' · ');
}
