import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type Hemisphere, hemisphereOf } from '@/lib/growing/hemisphere';

/** The half of the earth of each site, by the place of its time zone. */
export async function readHemispheres({ db }: ReadContext): Promise<ReadonlyMap<string, Hemisphere>> {
  const sites = await db.site.findMany({ select: { id: true, timeZone: true } });
  return new Map(sites.map(({ id, timeZone }) => [id, hemisphereOf(timeZone)]));
}
