import { dateInZone } from '@/lib/growing/calendar-date';

/** Name of an archive of records: whose they are in plain letters, and the day on which it was saved where the network is. */
export function archiveName(whose: string, now: Date, timeZone: string): string {
  const plain = whose
    .normalize('NFD')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .toLowerCase();
  return `${plain}-${dateInZone(now, timeZone)}.zip`;
}
