import type { NextChoice, NextPart, Outlook } from '@/lib/analysis/next-question/next-answer';
import { teachesLittle } from './next-sentences';

export type NextStarts = {
  /** The method of the answer; undefined where none can be told. */
  readonly recommended: Outlook | undefined;
  /** Another method, where a batch of it would teach enough to plan by. */
  readonly teaches: Outlook | undefined;
};

/** Tenths of a point, as sentences write them: a narrowing that rounds away is none. */
const written = (points: number) => Math.round(points * 10);

/** What a site can begin with: what it is advised, and apart from that what would teach most, where it teaches at all. */
export function nextStarts({ verdict, teaching, outlooks }: NextChoice): NextStarts {
  const find = (id: string | undefined) => outlooks.find(({ methodId }) => methodId === id);
  const recommended = verdict.kind === 'told' ? find(verdict.leader) : undefined;
  const [most] = teaching.kind === 'lessons' ? teaching.lessons : [];
  const enough = most !== undefined && !teachesLittle(most) && written(most.from) !== written(most.to);
  const teaches = enough ? find(most.methodId) : undefined;
  return { recommended, teaches: teaches === recommended ? undefined : teaches };
}

/** Where a method begins: one that treats with its treatment, an untreated batch at once. */
export function startAddress(
  { speciesId }: Pick<NextChoice, 'speciesId'>,
  { siteId, container, usualUnits }: NextPart,
  { kind, methodId }: Pick<Outlook, 'kind' | 'methodId'>,
): string {
  if (kind !== 'untreated') return `/treatments/new?${new URLSearchParams({ method: methodId, siteId })}`;
  const batch = { container, siteId, speciesId, unitCount: String(usualUnits) };
  return `/batches/new?${new URLSearchParams(batch)}`;
}
