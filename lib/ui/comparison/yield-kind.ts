import type { ContainerKind } from '@/lib/growing/vocabulary';

/** Which measure of yield a container has: BE for bags and the like, kg per m2 for beds, g per log and year for logs. */
export function yieldKind(container: ContainerKind): 'be' | 'bed' | 'log' {
  return container === 'bed' || container === 'log' ? container : 'be';
}
