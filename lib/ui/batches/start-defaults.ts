import type { ContainerKind } from '@/lib/growing/vocabulary';

/**
 * What the form of a new batch begins with. A bed is one unit whose mass nobody needs; a log's dry mass comes from its size. Rows of further
 * materials begin empty, so that they stay folded.
 */
export function startDefaults(container: ContainerKind): Record<string, string> {
  return {
    containerKind: container,
    unitCount: container === 'bed' ? '1' : '',
    moistureSource: container === 'log' || container === 'bed' ? 'none' : 'assumed',
    filledWith: 'substrate_only',
    'components.0.role': 'substrate',
    'components.0.massStage': 'filled',
  };
}
