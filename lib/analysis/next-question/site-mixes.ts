import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';
import type { SiteMix } from './next-ground';

/** Species and materials of a site that are looked at: its most grown ones. Our choice. */
const mostMixes = 4;

/** Species with material by how often they were grown; what was only received goes with the site's first species. */
export function mixesOf(
  grown: readonly JudgedBatch[],
  received: readonly string[],
): Omit<SiteMix, 'methods'>[] {
  const first = grown.filter(({ facts }) => !facts.voided && !facts.secondLife && !facts.mixedMaterial);
  const counted = [...grouped(first, ({ facts }) => `${facts.speciesId} ${facts.materialId ?? ''}`)]
    .flatMap(([, some]) => {
      const facts = some[0]?.facts;
      return facts === undefined || facts.materialId === null
        ? []
        : [{ speciesId: facts.speciesId, materialId: facts.materialId, batches: some.length }];
    })
    .sort(
      (a, b) =>
        b.batches - a.batches ||
        (`${a.speciesId} ${a.materialId}` < `${b.speciesId} ${b.materialId}` ? -1 : 1),
    );
  const [main] = counted;
  const stocked = received.flatMap((materialId) =>
    main === undefined || counted.some((mix) => mix.materialId === materialId)
      ? []
      : [{ speciesId: main.speciesId, materialId, batches: 0 }],
  );
  return [...counted.slice(0, mostMixes), ...stocked];
}
