import { getLocale, getTranslations } from 'next-intl/server';
import { dateInZone } from '@/lib/growing/calendar-date';
import { addMinutes } from '@/lib/growing/treatment-reading';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { dayOrTime } from '../today/reader';
import type { ClockWords } from './run-clock';

export type ClockView = {
  readonly startedAt: number;
  readonly target: number | null;
  readonly now: number;
  readonly locale: string;
  readonly words: ClockWords;
};

/** What a run waits for: the least time in its window, counted from its last reading while that is inside. */
function targetOf({ judgement, readings, window }: TreatmentView): Date | null {
  switch (judgement.kind) {
    case 'heat': {
      const last = readings
        .filter(({ place, celsius }) => place === 'load_middle' && celsius !== null)
        .at(-1);
      if (judgement.check.kind !== 'value' || last === undefined || window?.kind !== 'heat') return null;
      const inside = (last.celsius ?? 0) >= window.lowCelsius && (last.celsius ?? 0) <= window.highCelsius;
      return inside ? addMinutes(last.at, judgement.check.value.minutesLeft) : null;
    }
    case 'lime':
      return judgement.check.kind === 'value' ? judgement.check.value.liftOutFrom : null;
    case 'ferment':
      return judgement.check.kind === 'value' ? judgement.check.value.drainFrom : null;
    case 'none':
      return null;
  }
}

/** The clock of a running treatment; undefined once it is over. */
export async function loadClock(run: TreatmentView, now: Date): Promise<ClockView | undefined> {
  if (run.endedAt !== null) return undefined;
  const t = await getTranslations('treatments.clock');
  const locale = await getLocale();
  const target = targetOf(run);
  const { timeZone } = run.site;
  const at = target === null ? '' : dayOrTime(target, { timeZone, today: dateInZone(now, timeZone) }, locale);
  const length = '{length}';
  const kind = run.judgement.kind;
  return {
    startedAt: run.startedAt.getTime(),
    target: target?.getTime() ?? null,
    now: now.getTime(),
    locale,
    words: {
      running: t('running', { length }),
      until: kind === 'none' ? '' : t(`until.${kind}`, { length, at }),
      over: kind === 'none' ? '' : t(`over.${kind}`, { length, at }),
    },
  };
}
