import type { BuiltReport } from './build-content';
import type { FunderReportContent } from './funder-report';
import type { GroundPart } from './ground';
import { partsThatTell } from './parts-that-tell';
import { tellsPart } from './tells-part';

/** An earlier report over the same period that readers may have. */
export type EarlierReport = BuiltReport & { readonly version: number };

/** What each part writes into the content. */
const fieldsOf: Record<GroundPart, readonly (keyof FunderReportContent)[]> = {
  glance: ['sitesActive', 'peopleActive', 'batchesStarted'],
  baseline: ['changes'],
  harvest: ['harvest', 'changes'],
  protein: ['protein'],
  residues: ['residues', 'assumedResidues', 'batchesWithoutDryMass', 'changes'],
  practices: ['practices', 'adopted'],
  trainings: ['trainings'],
  sales: ['sales', 'changes'],
  costs: ['costs'],
  methods: ['methods'],
};

/** The part told with nothing in it: what can be kept of a part that no earlier report had. */
const keptBack = {
  protein: (content: FunderReportContent) => ({
    protein: content.protein.map((row) => ({
      ...row,
      fresh: { key: row.fresh.key, kind: 'protected' as const },
      range: { kind: 'protected' as const },
    })),
  }),
};

/**
 * Holds a report against those that readers have of the same period: a part of it that, less an earlier one, would tell
 * what few sites changed stands as it did in the latest that told it. `earlier` begins with the latest; each of them was
 * held against those before it, so that what stands again tells nothing new.
 */
export function carryOver(built: BuiltReport, earlier: readonly EarlierReport[]): BuiltReport {
  const parts = new Set(earlier.flatMap((one) => [...partsThatTell(one, built)]));
  let { content, ground } = built;
  for (const part of parts) {
    const source = earlier.find((one) => tellsPart(one, part));
    if (source) {
      const fields = fieldsOf[part].map((field) => [field, source.content[field]] as const);
      content = { ...content, ...Object.fromEntries(fields) };
      content = {
        ...content,
        carried: { ...content.carried, [part]: source.content.carried[part] ?? source.version },
      };
      if (source.ground[part]) ground = { ...ground, [part]: source.ground[part] };
    } else if (part === 'protein') {
      content = { ...content, ...keptBack.protein(content) };
      ground = { ...ground, protein: { species: [] } };
    }
  }
  return { content, ground };
}
