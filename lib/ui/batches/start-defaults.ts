import type { ContainerKind } from '@/lib/growing/vocabulary';

/** What the form of a new batch begins with. A bed is one unit; a log's dry mass comes from its size. */
export function startDefaults(container: ContainerKind, componentRows: number): Record<string, string> {
  const values: Record<string, string> = {
    containerKind: container,
    unitCount: container === 'bed' ? '1' : '',
    moistureSource: container === 'log' ? 'none' : 'assumed',
    filledWith: 'substrate_only',
  };
  for (let row = 0; row < componentRows; row += 1) {
    values[`components.${row}.role`] = row === 0 ? 'substrate' : 'supplement';
    values[`components.${row}.massStage`] = 'filled';
  }
  return values;
}
