import { modelBatches } from '@/lib/analysis/adjusted/model-batch';
import { compare } from '@/lib/analysis/comparison/compare';
import type { ComparisonFilter } from '@/lib/analysis/comparison/comparison-filter.input';
import { judgeBatches } from '@/lib/analysis/comparison/judged-batch';
import { answerRequest } from '@/lib/analysis/fitting/answer-request';
import type { Fit } from '@/lib/analysis/fitting/fit';
import { type StoryBatch, storyFacts } from './story-facts';

export const storyToday = '2026-11-25';
export const fitHere: Fit = async (request) => answerRequest(request);

const filter: ComparisonFilter = {
  from: '2020-01-01',
  to: storyToday,
  species: 'all',
  container: 'bag',
  material: 'all',
  method: undefined,
  site: undefined,
};

/** The demo's bags as a question gets them; `arrange` puts them in another order first. */
export function storyData(arrange: (batches: StoryBatch[]) => StoryBatch[] = (batches) => batches) {
  const story = arrange(storyFacts(storyToday).filter(({ facts }) => facts.containerKind === 'bag'));
  const facts = story.map((batch) => batch.facts);
  const judged = judgeBatches(facts, new Map(facts.map(({ siteId }) => [siteId, storyToday])));
  const lots = new Map(story.map((batch) => [batch.facts.id, { spawn: batch.spawnLot, material: null }]));
  const asOf = `${storyToday}T12:00:00.000Z`;
  const raw = compare(judged, filter, asOf);
  return { judged, batches: modelBatches(judged, lots), raw, filter, asOf };
}
