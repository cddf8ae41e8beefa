import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { asCalendarDate } from '../fields/stored-date';

/** A running trial that waits for somebody, at the sites that the reader sees. */
export type TrialBehind = {
  readonly id: string;
  readonly title: string;
  /** Runs of the list without a batch, although their day and the days of grace are over. */
  readonly late: number;
  /** Open batches of a trial of contamination whose window is over and that nobody looked at since. */
  readonly unlooked: number;
};

/** Running trials in which a run is late or a look at the end of the window is missing, by their titles. */
export async function listTrialsBehind({ db }: ReadContext, now: Date): Promise<TrialBehind[]> {
  const trials = await db.trial.findMany({
    where: { startedAt: { not: null }, endedAt: null, voidedAt: null },
    include: {
      slots: {
        where: { voidedAt: null, site: { leftAt: null } },
        include: { site: true, batch: { include: { outcome: true } } },
      },
    },
  });
  return trials
    .map(({ id, title, outcome, lateAfterDays, slots }) => {
      const counted = slots.map(({ site, plannedOn, batch, departure }) => {
        const today = todayInZone(site.timeZone, now);
        const judgedOn = batch?.outcome?.contaminationAssessedOn;
        return {
          // A run that was told as not made waits for nobody.
          late:
            batch === null && departure === null && addDays(asCalendarDate(plannedOn), lateAfterDays) < today,
          unlooked:
            outcome === 'contamination' &&
            batch?.closedOn === null &&
            batch.outcome?.contaminationClass === 'not-inspected' &&
            judgedOn !== null &&
            judgedOn !== undefined &&
            asCalendarDate(judgedOn) <= today,
        };
      });
      return {
        ...{ id, title },
        late: counted.filter(({ late }) => late).length,
        unlooked: counted.filter(({ unlooked }) => unlooked).length,
      };
    })
    .filter(({ late, unlooked }) => late + unlooked > 0)
    .sort((a, b) => a.title.localeCompare(b.title));
}
