import type { BuiltReport } from './build-content';
import { type GroundPart, type GroundTables, groundParts } from './ground';
import { growersThatTell } from './practices-beside';
import type { ProtectionRule } from './protect-cells';
import { tellsFew } from './tells-few';
import { tellsPart } from './tells-part';
import { headsTell, trainingsTell } from './trainings-tell';

/** Whether two states of the same tables, subtracted, leave what few sites did. */
export function tablesTell(before: GroundTables, now: GroundTables, rule: ProtectionRule): boolean {
  const names = new Set([...Object.keys(before), ...Object.keys(now)]);
  return [...names].some((name) => tellsFew(before[name] ?? [], now[name] ?? [], rule, true));
}

/** Harvest by destination and by species are two tables of one total: each is held against the other of the earlier report. */
function harvestTells(earlier: BuiltReport, built: BuiltReport): boolean {
  const { rule } = built.content;
  const sums = ({ ground }: BuiltReport) => ({
    destinations: ground.harvest?.harvest ?? [],
    species: ground.protein?.species ?? [],
  });
  const [before, now] = [sums(earlier), sums(built)];
  return (
    tellsFew(before.destinations, now.species, rule, false) ||
    tellsFew(before.species, now.destinations, rule, false)
  );
}

/** Parts of a report whose difference from an earlier one of the same period would tell what few sites changed. */
export function partsThatTell(earlier: BuiltReport, built: BuiltReport): Set<GroundPart> {
  const { rule } = built.content;
  const told = new Set<GroundPart>(
    groundParts.filter((part) => {
      const [before, now] = [earlier.ground[part], built.ground[part]];
      if (part === 'baseline' || before === undefined || now === undefined) return false;
      return tellsPart(earlier, part) && tellsPart(built, part) && tablesTell(before, now, rule);
    }),
  );
  if (headsTell(earlier.content.peopleActive, built.content.peopleActive, rule)) told.add('glance');
  if (trainingsTell(earlier.content.trainings, built.content.trainings, rule)) told.add('trainings');
  if (growersThatTell(built.content, earlier.content).length > 0) told.add('practices');
  if (told.has('harvest') || told.has('protein') || harvestTells(earlier, built))
    for (const part of ['harvest', 'protein'] as const) if (tellsPart(built, part)) told.add(part);
  return told;
}
