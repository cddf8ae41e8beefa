import 'server-only';
import { currentUnits, type ReaderUnits } from '@/lib/access/current-units';

/** The units of the reader of this page, as `getLocale` gives their language; for sentences made far from the page. */
export function getReaderUnits(): Promise<ReaderUnits> {
  return currentUnits();
}
