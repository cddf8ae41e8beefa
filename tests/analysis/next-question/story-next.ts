import { answerNext } from '@/lib/analysis/next-question/answer-next';
import type { SiteGround } from '@/lib/analysis/next-question/next-ground';
import { mixesOf } from '@/lib/analysis/next-question/site-mixes';
import { type MethodKind, methodKinds } from '@/lib/growing/vocabulary';
import { storySites } from '@/seed/story/sites';
import { fitHere, storyData } from '../adjusted/story-data';
import type { StoryBatch } from '../adjusted/story-facts';

/** What the demo's sites could do next if each could use every method that `usable` names besides its own. */
export function askStory(options: {
  readonly season: string;
  readonly usable?: readonly MethodKind[];
  readonly arrange?: (batches: StoryBatch[]) => StoryBatch[];
}) {
  const { judged, batches, filter, asOf } = storyData(options.arrange);
  const sites = storySites.map(({ code, methods }): SiteGround => {
    const own = judged.filter(({ facts }) => facts.siteId === code);
    const usable = methodKinds.filter(
      (kind) => methods[kind] !== undefined || options.usable?.includes(kind) === true,
    );
    return {
      siteId: code,
      unsaid: false,
      usable,
      mixes: mixesOf(own, []).map((mix) => ({
        ...mix,
        methods: methodKinds.map((methodId) => ({ methodId, verdict: 'suits', reasons: [] })),
      })),
    };
  });
  return answerNext(
    {
      judged,
      batches,
      ground: { sites, methodKinds: Object.fromEntries(methodKinds.map((kind) => [kind, kind])) },
      costs: { currency: 'USD', batches: [] },
      filter,
      season: options.season,
      asOf,
    },
    fitHere,
  );
}
