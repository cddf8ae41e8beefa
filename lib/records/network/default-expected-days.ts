import type { AssessmentWindowDefault } from '@/lib/growing/assessment-window-defaults';
import { timingFor } from '@/lib/growing/expected-dates';
import { firstLookDays } from '@/lib/growing/expected-days';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { type ExpectedColumns, expectedDaysColumns } from '../settings/expected-days-columns';

/** What a new network expects of a species in a container, as the columns of its window. */
export function defaultExpectedDays(window: AssessmentWindowDefault): ExpectedColumns {
  const species = speciesDefaults.find(({ code }) => code === window.speciesCode);
  const timing = timingFor(species?.timing ?? [], window.container);
  const rests = window.container === 'bed' || window.container === 'log';
  return expectedDaysColumns({
    firstLook: rests ? null : firstLookDays(window.contaminationDays),
    colonised: timing?.colonisedDays ?? null,
    pins: timing?.pinsDays ?? null,
    firstHarvest: timing?.firstHarvestDays ?? null,
    betweenFlushes: timing?.betweenFlushesDays ?? null,
  });
}
