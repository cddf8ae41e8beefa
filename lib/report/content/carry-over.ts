import { baselineTotalTells, partsBesideBaseline, partsBesidePeriod } from './baseline-tells';
import { besideStretches } from './beside-stretches';
import type { BuiltReport } from './build-content';
import { carryChanges } from './carry-changes';
import type { FunderReportContent } from './funder-report';
import { type GroundPart, groundParts } from './ground';
import { partsHiddenTogether } from './hidden-together';
import { leftOutThatTell, withoutLeftOut } from './left-out-beside';
import { partsBesideDays } from './parts-beside-days';
import { partsThatTell } from './parts-that-tell';
import { practicesThatTell, withoutPractices } from './practices-beside';
import { samePeriod } from './same-period';
import { tellLess } from './tell-less';
import { tellsPart } from './tells-part';
import { baselineTotals } from './told-totals';

/** An earlier report that readers may have: over days of the same period or of its baseline, or with a baseline over such days. */
export type EarlierReport = BuiltReport & { readonly version: number };

/** What each part writes into the content; the changes are worked out of the others. */
const fieldsOf: Record<GroundPart, readonly (keyof FunderReportContent)[]> = {
  glance: ['sitesActive', 'peopleActive', 'batchesStarted'],
  baseline: [],
  harvest: ['harvest'],
  protein: ['protein'],
  residues: ['residues', 'residuesLeftOut', 'assumedResidues', 'batchesWithoutDryMass'],
  practices: ['practices', 'adopted'],
  trainings: ['trainings'],
  sales: ['sales'],
  costs: ['costs'],
  methods: ['methods'],
};

function carryPart({ content, ground }: BuiltReport, part: GroundPart, source: EarlierReport): BuiltReport {
  const fields = fieldsOf[part].map((field) => [field, source.content[field]] as const);
  return {
    content: {
      ...content,
      ...Object.fromEntries(fields),
      carried: { ...content.carried, [part]: source.content.carried[part] ?? source.version },
    },
    ground: source.ground[part] ? { ...ground, [part]: source.ground[part] } : ground,
  };
}

/** Parts that are told or kept back as a whole beside reports over other days; practices are numbers of their own. */
const heldWhole = groundParts.filter((part) => part !== 'practices');
/** Two tables of one total. */
const ofHarvest: readonly GroundPart[] = ['harvest', 'protein'];
const tellingOf = (built: BuiltReport, parts: readonly GroundPart[]) =>
  parts.filter((part) => tellsPart(built, part));

/** Parts that would tell of few sites beside one of the earlier reports; the changes apart. */
function partsToHold(built: BuiltReport, earlier: readonly BuiltReport[]): Set<GroundPart> {
  const byDays = [
    ...besideStretches(built, earlier, heldWhole).map(({ part }) => part),
    ...partsHiddenTogether(built, earlier, built.content.rule),
  ];
  return new Set([
    ...byDays.flatMap((part) => (ofHarvest.includes(part) ? tellingOf(built, ofHarvest) : [part])),
    ...earlier.flatMap((one) => [
      ...(samePeriod(one.content, built.content) ? partsThatTell(one, built) : []),
      ...partsBesideBaseline(one, built),
      ...partsBesidePeriod(one, built),
      ...partsBesideDays(one, built),
    ]),
  ]);
}

/**
 * Holds a report against those that readers have of the same days: a part of it that, less an earlier one, would tell
 * what few sites changed stands as it did in the latest that told it over the same period; where none did, as few of its
 * numbers as possible are kept back. `earlier` begins with the latest; each of them was held against those before it, so that what stands again tells
 * nothing new. Practices beside reports over other days, and what is left out of the residues, are kept back one by one.
 */
export function carryOver(built: BuiltReport, earlier: readonly EarlierReport[]): BuiltReport {
  const ofPeriod = earlier.filter((one) => samePeriod(one.content, built.content));
  let report = withoutPractices(built, practicesThatTell(built, earlier));
  report = withoutLeftOut(report, leftOutThatTell(report, earlier));
  const settled = new Set<GroundPart>();
  for (const part of partsToHold(report, earlier)) {
    if (settled.has(part)) continue;
    const source = ofPeriod.find((one) => tellsPart(one, part));
    const together = ofHarvest.includes(part) ? tellingOf(report, ofHarvest) : [part];
    if (source) {
      report = carryPart(report, part, source);
      continue;
    }
    const safe = (version: BuiltReport) => {
      const held = partsToHold(version, earlier);
      return !together.some((one) => held.has(one));
    };
    for (const one of together) settled.add(one);
    report = tellLess(report, together, safe);
  }
  return carryChanges(report, earlier, built.content);
}

/**
 * Whether a draft, as it stands, would tell of few sites beside reports that readers have. Parts that stand as published
 * before tell nothing new.
 */
export function tellsBeside(draft: BuiltReport, earlier: readonly BuiltReport[]): boolean {
  const fresh = [...partsToHold(draft, earlier)].filter((part) => draft.content.carried[part] === undefined);
  const practices = draft.content.carried.practices === undefined ? practicesThatTell(draft, earlier) : [];
  const leftOut = draft.content.carried.residues === undefined ? leftOutThatTell(draft, earlier) : [];
  return (
    fresh.length > 0 ||
    [...practices, ...leftOut].length > 0 ||
    baselineTotals(draft).some((total) => baselineTotalTells(total, draft, earlier))
  );
}
