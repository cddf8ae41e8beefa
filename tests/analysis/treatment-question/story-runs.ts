import { type EncodedRun, type JudgedRun, judgedRun } from '@/lib/analysis/treatment-question/judged-run';
import { methodDefaults } from '@/lib/growing/method-defaults';
import { planStory } from '@/seed/plan/plan-story';
import type { PlannedRun } from '@/seed/plan/story-plan';

const minute = 60_000;

/** A planned run as the database would hand it over; ids are the story's own keys, methods their kinds. */
function encoded(run: PlannedRun): EncodedRun {
  const startedAt = Date.parse(`${run.date}T14:00:00Z`);
  const place = run.method === 'hot_water_bath' || run.method === 'steam' ? 'load_middle' : 'water';
  return [
    run.key,
    run.key,
    run.siteCode,
    run.method,
    run.date,
    startedAt,
    startedAt + run.minutes * minute,
    null,
    run.readings.map(({ minutes, celsius, ph }) => [startedAt + minutes * minute, place, celsius, ph]),
  ];
}

/** The demo's runs, held against the windows that a new network starts with. */
export function storyRuns(today: string): JudgedRun[] {
  return planStory(today).runs.flatMap((run) => {
    const window = methodDefaults.find(({ kind }) => kind === run.method)?.window ?? null;
    return judgedRun(encoded(run), window, new Date(`${today}T12:00:00Z`)) ?? [];
  });
}
