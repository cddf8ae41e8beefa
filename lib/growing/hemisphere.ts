import { southernZones } from './southern-zones';

/** Which half of the earth; 'unknown' where the zone names no place, as UTC does. */
export type Hemisphere = 'north' | 'south' | 'unknown';

/** Zones that are offsets or whole countries' clocks of old and name no place: 'UTC', 'Etc/GMT+3', 'EST'. */
const placeless = /^(Etc\/.*|UTC|UCT|GMT.*|Universal|Zulu|Greenwich|[A-Z]{3}(\d[A-Z]{3})?|EST5EDT)$/;

/**
 * The half of the earth in which the principal place of an IANA time zone lies. A few zones reach over the equator; a place on
 * the other side of it from the one that the zone is named after is told wrong, where seasons hardly differ.
 */
export function hemisphereOf(timeZone: string): Hemisphere {
  if (southernZones.has(timeZone)) return 'south';
  return placeless.test(timeZone) ? 'unknown' : 'north';
}
