import fc from 'fast-check';
import type { SpeciesHarvest } from '@/lib/analysis/production/read-species-harvest';
import { amountPart } from '@/lib/report/content/amount-part';
import type { BuiltReport } from '@/lib/report/content/build-content';
import { proteinPart } from '@/lib/report/content/protein-part';

/** Fresh grams of one species of one site that went one way. */
export type Picked = {
  readonly siteId: string;
  readonly destination: string;
  readonly species: string;
  readonly grams: number;
};

export const rule = { minSites: 5, topTwoPercent: 85 };

const picked = (sites: number) =>
  fc.record({
    siteId: fc.integer({ min: 1, max: sites }).map((site) => `site ${site}`),
    destination: fc.constantFrom('sold', 'donated', 'kept', 'composted'),
    species: fc.constantFrom('oyster', 'shiitake', 'lions_mane'),
    // Mostly alike, now and then a site that outweighs all others.
    grams: fc.oneof(
      { weight: 9, arbitrary: fc.integer({ min: 1, max: 40 }) },
      fc.integer({ min: 1, max: 4000 }),
    ),
  });

/** A network's harvest, and the same after records of a few or of many sites were added. */
export const network = fc.integer({ min: 1, max: 14 }).chain((sites) =>
  fc.record({
    first: fc.array(picked(sites), { minLength: 1, maxLength: 60 }),
    added: fc.array(fc.array(picked(sites), { minLength: 0, maxLength: 30 }), { minLength: 1, maxLength: 2 }),
  }),
);

export function harvestCells(rows: readonly Picked[]) {
  return rows.map(({ siteId, destination, grams }) => ({ siteId, destination, grams }));
}

export function speciesCells(rows: readonly Picked[]): SpeciesHarvest[] {
  return rows.map(({ siteId, species, grams }) => ({
    ...{ siteId, grams },
    ...{ speciesCode: species, speciesEn: species, speciesEs: species },
  }));
}

const nothing = { total: { key: 'total', kind: 'shown' as const, amount: 0, sites: 0 }, cells: [] };

/** A report of a harvest, as it is built before it is held against earlier ones. */
export function built(rows: readonly Picked[]): BuiltReport {
  const harvest = amountPart(harvestCells(rows), ({ destination }) => destination, rule);
  const protein = proteinPart(speciesCells(rows), harvest, rule);
  return {
    content: {
      ...{ form: 2, networkName: 'Larkmoor', from: '2026-01-01', to: '2026-12-31', builtAt: '' },
      indicators: ['harvest', 'protein'],
      ...{ sitesActive: 0, peopleActive: 0, batchesStarted: 0, batchesWithoutDryMass: 0, rule },
      harvest: harvest.table,
      ...{ residues: nothing, assumedResidues: [], practices: [], adopted: [], sales: [], changes: [] },
      ...protein.content,
      ...{ methods: [], carried: {} },
    },
    ground: { harvest: { harvest: harvest.known }, protein: protein.ground },
  };
}
