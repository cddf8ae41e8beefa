import type { BuiltReport } from './build-content';
import type { FunderReportContent } from './funder-report';
import { type GroundPart, type GroundTables, groundParts } from './ground';
import { growersThatTell } from './practices-beside';
import type { ProtectionRule } from './protect-cells';
import { tellsFew } from './tells-few';
import { tellsPart } from './tells-part';

/** Whether two states of the same tables, subtracted, leave what few sites did. */
export function tablesTell(before: GroundTables, now: GroundTables, rule: ProtectionRule): boolean {
  const names = new Set([...Object.keys(before), ...Object.keys(now)]);
  return [...names].some((name) => tellsFew(before[name] ?? [], now[name] ?? [], rule, true));
}

type Trainings = NonNullable<FunderReportContent['trainings']>;
type Answers = Trainings['answers'][number]['answers'];

/** Fewer than the fewest, and not nobody. */
const fewApart = (one: number, other: number, { minSites }: ProtectionRule) =>
  one !== other && Math.abs(one - other) < minSites;

/**
 * Two states of the answers to one question: a mean and its number give the sum of the answers, so that the difference
 * tells what was on a sheet that was added, or on one that was changed.
 */
function answersTell(before: Answers, now: Answers, rule: ProtectionRule): boolean {
  if (before.kind === 'protected' || now.kind === 'protected') return false;
  const sides = [
    [before.nBefore, now.nBefore, before.meanBefore, now.meanBefore],
    [before.nAfter, now.nAfter, before.meanAfter, now.meanAfter],
  ] as const;
  return sides.some(
    ([nThen, nNow, meanThen, meanNow]) =>
      fewApart(nThen, nNow, rule) || (nThen === nNow && meanThen !== meanNow),
  );
}

const sameQuestion = (one: Trainings['answers'][number], other: Trainings['answers'][number]) =>
  one.scaleMost === other.scaleMost &&
  one.wording.trim().toLowerCase() === other.wording.trim().toLowerCase();

/** People are counted, not summed by site: a change of a few of them is theirs. */
export function trainingsTell(
  before: FunderReportContent['trainings'],
  now: FunderReportContent['trainings'],
  rule: ProtectionRule,
): boolean {
  if (!before || !now) return false;
  const heads = (['attendances', 'people', 'unnamedHeads'] as const).some((key) => {
    const [then, today] = [before[key], now[key]];
    return then.kind === 'shown' && today.kind === 'shown' && fewApart(then.people, today.people, rule);
  });
  return (
    heads ||
    before.answers.some((then) =>
      now.answers.some(
        (today) => sameQuestion(then, today) && answersTell(then.answers, today.answers, rule),
      ),
    )
  );
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
  if (trainingsTell(earlier.content.trainings, built.content.trainings, rule)) told.add('trainings');
  if (growersThatTell(built.content, earlier.content).length > 0) told.add('practices');
  if (told.has('harvest') || told.has('protein') || harvestTells(earlier, built))
    for (const part of ['harvest', 'protein'] as const) if (tellsPart(built, part)) told.add(part);
  return told;
}
