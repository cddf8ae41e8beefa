import { answerNext } from '@/lib/analysis/next-question/answer-next';
import type { SiteGround } from '@/lib/analysis/next-question/next-ground';
import { mixesOf } from '@/lib/analysis/next-question/site-mixes';
import { type MethodKind, methodKinds } from '@/lib/growing/vocabulary';
import { storySites } from '@/seed/story/sites';
import { fitHere, storyData } from '../adjusted/story-data';
import type { StoryBatch } from '../adjusted/story-facts';

/** What the demo's sites could do next if each could use every method that `usable` names besides its own. */
export function askStory(options: {
  readonly season: string | null;
  readonly usable?: readonly MethodKind[];
  /** What no site has, whatever it has used. */
  readonly without?: readonly MethodKind[];
  /** Instead of what each site grows. */
  readonly mixes?: ReturnType<typeof mixesOf>;
  readonly arrange?: (batches: StoryBatch[]) => StoryBatch[];
}) {
  const { judged, batches, filter, asOf } = storyData(options.arrange);
  const sites = storySites.map(({ code, methods }): SiteGround => {
    const own = judged.filter(({ facts }) => facts.siteId === code);
    const usable = methodKinds.filter(
      (kind) =>
        options.without?.includes(kind) !== true &&
        (methods[kind] !== undefined || options.usable?.includes(kind) === true),
    );
    return {
      siteId: code,
      unsaid: false,
      season: options.season,
      usable,
      mixes: (options.mixes ?? mixesOf(own, [])).map((mix) => ({
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
      asOf,
    },
    fitHere,
  );
}
