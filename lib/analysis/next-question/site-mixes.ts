import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';
import type { SiteMix } from './next-ground';

/** Species and materials of a site that are looked at: its most grown ones. Our choice. */
const mostMixes = 4;

type Mix = Omit<SiteMix, 'methods'>;

/** Species with material by how often they were grown; what was only received goes with the site's first species. */
export function mixesOf(grown: readonly JudgedBatch[], received: readonly string[]): Mix[] {
  const counted = countMixes(grown);
  const [main] = counted;
  const stocked = received.flatMap((materialId) =>
    main === undefined || counted.some((mix) => mix.materialId === materialId)
      ? []
      : [{ speciesId: main.speciesId, materialId, batches: 0 }],
  );
  return [...counted.slice(0, mostMixes), ...stocked];
}

/**
 * The species with the material that was asked for. What was not asked is what the site grew most with what was, then what it
 * has received, then what it grew most at all, then what the network grew most. Undefined where nothing was ever grown.
 */
export function mixAsked(
  asked: { readonly speciesId: string | undefined; readonly materialId: string | undefined },
  own: readonly JudgedBatch[],
  received: readonly string[],
  network: readonly JudgedBatch[],
): Mix | undefined {
  const [here, everywhere] = [countMixes(own), countMixes(network)];
  const fits = (mix: Mix) =>
    (asked.speciesId ?? mix.speciesId) === mix.speciesId &&
    (asked.materialId ?? mix.materialId) === mix.materialId;
  const [main] = [...here, ...everywhere];
  const best = here.find(fits);
  if (best) return best;
  const [stock] = received;
  const likely = everywhere.find(fits);
  const speciesId = asked.speciesId ?? here[0]?.speciesId ?? likely?.speciesId ?? main?.speciesId;
  const materialId =
    asked.materialId ?? stock ?? here[0]?.materialId ?? likely?.materialId ?? main?.materialId;
  return speciesId === undefined || materialId === undefined
    ? undefined
    : { speciesId, materialId, batches: 0 };
}

/** First lives on one material, the most grown first. */
function countMixes(grown: readonly JudgedBatch[]): Mix[] {
  const first = grown.filter(({ facts }) => !facts.voided && !facts.secondLife && !facts.mixedMaterial);
  return [...grouped(first, ({ facts }) => `${facts.speciesId} ${facts.materialId ?? ''}`)]
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
}
