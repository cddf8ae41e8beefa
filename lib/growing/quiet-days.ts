import type { ContainerKind } from './vocabulary';

/**
 * Days without any entry after which an open batch is asked about: close it? Bags and the like crop in weeks; logs and
 * beds rest through a season and crop again, so only a whole year of silence says something. Common practice.
 */
export function quietDays(container: ContainerKind): number {
  return container === 'log' || container === 'bed' ? 365 : 30;
}
