import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';

/**
 * Whether a report tells a part. Its ground may hold sums of harvest, residues and, in reports built before, sales that it
 * does not tell. The harvest is told by its own section, by that of protein (the same total) and by the changes.
 */
export function tellsPart({ content, ground }: BuiltReport, part: GroundPart): boolean {
  const { indicators, changes, trainings } = content;
  if (part === 'trainings') return trainings !== undefined;
  if (ground[part] === undefined) return false;
  if (part === 'harvest')
    return indicators.includes('harvest') || indicators.includes('protein') || changes.length > 0;
  return (part !== 'residues' && part !== 'sales') || indicators.includes(part);
}
