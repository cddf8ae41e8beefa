import type { FollowUpView, StoryEntry } from '@/lib/records/batch/batch-story';
import { dateValues } from '../form/date-values';
import type { FormState } from '../form/field-spec';

type Correctable = Extract<StoryEntry, { kind: 'look' | 'finding' | 'loss' | 'check' }>;

/** What the form that corrects an entry begins with. */
export function entryValues(entry: Correctable): FormState['values'] {
  const own = { id: entry.id, revision: String(entry.revision), note: entry.note ?? '' };
  switch (entry.kind) {
    case 'look':
      return { ...own, ...dateValues('lookedOn', entry.on) };
    case 'check':
      return { ...own, kind: entry.what, ...dateValues('checkedOn', entry.on) };
    case 'finding':
      return {
        ...own,
        units: String(entry.units),
        sign: entry.sign,
        stage: entry.stage,
        action: entry.action,
        unitNumbers: entry.unitNumbers.join(', '),
        ...dateValues('foundOn', entry.on),
      };
    case 'loss':
      return {
        ...own,
        units: String(entry.units),
        contaminatedUnits: entry.contaminatedUnits === 0 ? '' : String(entry.contaminatedUnits),
        cause: entry.cause,
        unitNumbers: entry.unitNumbers.join(', '),
        ...dateValues('lostOn', entry.on),
      };
  }
}

/** The same for what was done later with units of a finding. */
export function followUpValues(followUp: FollowUpView): FormState['values'] {
  return {
    id: followUp.id,
    revision: String(followUp.revision),
    note: followUp.note ?? '',
    units: String(followUp.units),
    action: followUp.action,
    ...dateValues('doneOn', followUp.on),
  };
}
