import type { WeighingView } from '@/lib/records/weighing/weighing-view';
import { dateValues } from '../form/date-values';
import { type MassReader, massValues } from '../form/mass-units';

/** What the form of a correction starts from. A crate split by live units stays so until masses are typed. */
export function weighingValues(weighing: WeighingView, reader: MassReader): Record<string, string> {
  const several = weighing.lines.length > 1;
  const values: Record<string, string> = {
    id: weighing.id,
    revision: String(weighing.revision),
    trimState: weighing.trimState,
    grade: weighing.grade ?? '',
    note: weighing.note ?? '',
    ...massValues('fresh', weighing.freshGrams, reader),
    ...dateValues('weighedOn', weighing.weighedOn),
  };
  for (const [index, line] of weighing.lines.entries()) {
    values[`lines.${index}.batchId`] = line.batchId;
    values[`lines.${index}.flush`] = String(line.flush);
    if (line.forcedFlush !== null) values[`lines.${index}.forcedFlush`] = line.forcedFlush ? 'yes' : 'no';
    if (several && !line.shared)
      Object.assign(values, massValues(`lines.${index}.fresh`, line.freshGrams, reader));
  }
  for (const [destination, grams] of Object.entries(weighing.destinations)) {
    Object.assign(values, massValues(destination, grams, reader));
  }
  return values;
}
