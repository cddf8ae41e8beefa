import { z } from 'zod';
import { parseDurationEntry } from '@/lib/growing/duration-entry';
import { optionalEntryField, type Reading, read, wrong } from './entry-field';
import { readerSign } from './reader-sign';
import { ambiguous, unreadableCode } from './unreadable-code';

const mostMinutes = 60 * 24 * 60;

function limited(exact: number): Reading<number> {
  const minutes = Math.round(exact);
  if (minutes < 1) return wrong('not-positive');
  return minutes > mostMinutes ? wrong('too-large', { max: `${mostMinutes / 60} h` }) : read(minutes);
}

/** How long something took, in whole minutes up to 60 days, that may be left out: from `{ text, unit }` with unit min or h. */
export const optionalMinutesField = optionalEntryField(
  (typed) => {
    if (typeof typed === 'number') return limited(typed);
    const unit = typed.unit ?? 'min';
    if (unit !== 'min' && unit !== 'h') return wrong('unit-unknown');
    const entry = parseDurationEntry(typed.text, unit, readerSign());
    if (entry.kind === 'unreadable') return unreadableCode(entry);
    if (entry.kind === 'ambiguous')
      return ambiguous(entry.readings, (minutes) => `${Number(minutes.toFixed(1))} min`);
    return limited(entry.minutes);
  },
  { json: z.int().min(1).max(mostMinutes) },
);
