import type { Actor } from '@/lib/access/actor';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import type { Shed } from '@/lib/records/shed/get-shed.query';
import type { DynamicWords } from '../i18n/dynamic-words';
import { dueText } from './due-text';

const mostDue = 60;

/** What a phone keeps of a person's work, lines of what is due already in the person's words. */
export function shedSnapshot(
  actor: Actor,
  { batches, runs, due }: Shed,
  words: DynamicWords,
  locale: string,
  now: Date,
): ShedSnapshot {
  const reader = { words, locale, language: actor.language, temperatureUnit: actor.temperatureUnit, now };
  const { personId: id, name, language, region, massUnit, temperatureUnit } = actor;
  return {
    takenAt: now.toISOString(),
    person: { id, name, language, region, massUnit, temperatureUnit },
    network: { id: actor.networkId, name: actor.networkName },
    batches,
    runs,
    due: due.slice(0, mostDue).map((line) => dueText(line, reader)),
  };
}
