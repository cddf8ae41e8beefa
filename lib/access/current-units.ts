import 'server-only';
import type { Person } from './actor';
import { currentSigned } from './current';

export type ReaderUnits = Pick<Person, 'massUnit' | 'temperatureUnit' | 'volumeUnit'>;

/** The units the reader chose; before sign-in metric ones. */
export async function currentUnits(): Promise<ReaderUnits> {
  const signed = await currentSigned();
  return signed?.person ?? { massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' };
}
