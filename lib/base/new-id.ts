import { v7 } from 'uuid';

/** A UUIDv7: sorts by time of making, and a phone without signal can make it. */
export function newId(): string {
  return v7();
}
