import { todayInZone } from '@/lib/growing/calendar-date';
import { parseCountEntry } from '@/lib/growing/count-entry';
import { contaminationSignKinds, findingActions } from '@/lib/growing/vocabulary';
import { unitsText } from './batch-line';
import { type CheckEntry, checkBatchAndDay, dayText, problem } from './checked-entry';
import { fillPlaces } from './fill-places';
import { textAt } from './typed-entry';

const stages = ['colonising', 'cropping'] as const;
// Units with one of these actions no longer stand in the shed.
const removing: readonly string[] = ['discarded', 'buried'];

/** Reads a contamination as typed: batch, sign, units, what was done, stage, day. */
export const checkFinding: CheckEntry = (typed, context) => {
  const { words } = context;
  const { batch, day, problems } = checkBatchAndDay(typed, context, { batch: 'batchId', day: 'foundOn' });
  const sign = contaminationSignKinds.find((one) => one === textAt(typed, 'sign'));
  if (!sign) problems.push(problem(words, 'sign', 'missing-choice'));
  const text = textAt(typed, 'units');
  const units = parseCountEntry(text);
  if (units.kind !== 'number' || units.value < 1)
    problems.push(problem(words, 'units', text === '' ? 'missing' : 'not-whole'));
  else if (batch && units.value > batch.liveUnits)
    problems.push(problem(words, 'units', 'too-many-units', { most: batch.liveUnits, code: batch.code }));
  const action = findingActions.find((one) => one === textAt(typed, 'action'));
  if (!action) problems.push(problem(words, 'action', 'missing-choice'));
  const stage = stages.find((one) => one === textAt(typed, 'stage'));
  if (!stage) problems.push(problem(words, 'stage', 'missing-choice'));
  if (problems.length > 0 || !batch || !sign || units.kind !== 'number' || !action || !stage)
    return { kind: 'wrong', problems };
  const gone = removing.includes(action) ? units.value : 0;
  return {
    kind: 'ready',
    batch,
    after: { ...batch, liveUnits: batch.liveUnits - gone },
    entryKind: 'finding',
    input: {
      batchId: batch.id,
      foundOn: day,
      units: units.value,
      sign,
      stage,
      action,
      unitNumbers: textAt(typed, 'unitNumbers'),
      note: textAt(typed, 'note'),
    },
    summary: fillPlaces(words.finding.saved, {
      units: unitsText(units.value, batch.container, words),
      code: batch.code,
      sign: words.sign[sign].toLocaleLowerCase(words.form.locale),
      day: dayText(day, todayInZone(batch.timeZone, context.now), words),
    }),
  };
};
