import type { ShedDue } from '@/lib/offline/shed-snapshot';
import type { DueLine } from '@/lib/records/today/due-line';
import { dueWords } from '../today/due-words';
import type { Reader } from '../today/reader';

/** A line of what is due in words, for a phone that shows it with no signal: without what is true only now. */
export function dueText(line: DueLine, reader: Reader): ShedDue {
  const { text, place, why, href } = dueWords(line, reader);
  return {
    text,
    place,
    when: why,
    href,
    dueAt: line.of === 'run' ? line.due.at.toISOString() : line.due.from,
  };
}
