import { describe, expect, it } from 'vitest';
import { addDays, daysBetween } from '@/lib/growing/calendar-date';
import { planStory } from '@/seed/plan/plan-story';
import type { PlannedBatch } from '@/seed/plan/story-plan';

const [first, later] = ['2026-11-25', '2027-02-03'];

/** What happens to a batch sooner or later, told in days of its own: the same whenever the story ends. */
const ofTheBatch = ({ siteCode, method, spawnLotCode, unitCount, moisturePercent }: PlannedBatch) =>
  JSON.stringify([siteCode, method, spawnLotCode, unitCount, moisturePercent]);
const fate = (batch: PlannedBatch) =>
  batch.findings.map(({ date, units }) => [daysBetween(batch.inoculatedOn, date), units]);

describe('the demo told on another day', () => {
  const [one, other] = [planStory(first), planStory(later)];
  const moved = daysBetween(first, later);

  it('has the same batches, moved by as many days', () => {
    const told = (batches: readonly PlannedBatch[], days: number) =>
      batches.map((batch) => `${addDays(batch.inoculatedOn, days)} ${ofTheBatch(batch)}`);
    expect(told(one.batches, moved)).toEqual(told(other.batches, 0));
  });

  it('differs from one day to the next only where a batch comes into the wet spring or leaves it', () => {
    const nextDay = planStory(addDays(first, 1)).batches;
    const changed = one.batches.filter((batch, index) => {
      const twin = nextDay[index];
      return twin === undefined || JSON.stringify(fate(twin)) !== JSON.stringify(fate(batch));
    });
    expect(changed.length).toBeLessThan(10);
  });
});
