import { addDays } from '@/lib/growing/calendar-date';
import { contaminationSignKinds } from '@/lib/growing/vocabulary';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { flushShares } from '../story/crops';
import { truths } from '../story/truths';
import { between, logistic, pickWeighted } from './pick';
import type { PlannedBatch, PlannedFinding, PlannedWeighing } from './story-plan';

type Growth = {
  readonly inoculatedOn: string;
  readonly today: string;
  readonly unitCount: number;
  readonly logit: number;
  readonly dryGramsPerUnit: number;
  readonly bePercent: number;
  readonly firstHarvestDays: number;
  readonly flushDays: number;
  readonly flushes: number;
  readonly windowDays: number;
};

type Outcome = Pick<
  PlannedBatch,
  'looks' | 'findings' | 'colonisedOn' | 'weighings' | 'lost' | 'closedOn' | 'notWeighed'
>;

const signWeights: Partial<Record<(typeof contaminationSignKinds)[number], number>> = {
  green: 50,
  blue_green: 10,
  black: 10,
  orange_pink: 8,
  grey_cobweb: 6,
  wet_brown: 10,
  ink_caps: 6,
};

/** What became of a batch up to today: found contaminated, colonised, picked, closed. */
export function planOutcome(random: SeededRandom, growth: Growth): Outcome {
  const { inoculatedOn, today, unitCount } = growth;
  const day = (days: number) => addDays(inoculatedOn, days);
  const past = (date: string) => date <= today;
  const contaminated = random.binomial(unitCount, logistic(growth.logit));
  const late = contaminated > 1 ? random.binomial(contaminated, 0.15) : 0;
  const early = contaminated - late;
  const findings: PlannedFinding[] = [];
  const sign = () => pickWeighted(random, contaminationSignKinds, (kind) => signWeights[kind] ?? 0);
  const firstPart = early > 2 ? Math.ceil(early * 0.6) : early;
  if (firstPart > 0)
    findings.push({ date: day(between(random, 8, 13)), units: firstPart, sign: sign(), cropping: false });
  if (early > firstPart)
    findings.push({
      date: day(between(random, 15, 20)),
      units: early - firstPart,
      sign: sign(),
      cropping: false,
    });
  if (late > 0)
    findings.push({
      date: day(growth.windowDays + between(random, 4, 18)),
      units: late,
      sign: sign(),
      cropping: true,
    });
  const looks = [day(between(random, 9, 11))];
  if (random.next() > truths.neverLookedAgain) looks.push(day(growth.windowDays + between(random, 0, 3)));

  const lostUnits = random.next() < 0.04 ? Math.min(unitCount - contaminated, between(random, 1, 2)) : 0;
  const lost = lostUnits > 0 ? { date: day(between(random, 18, 26)), units: lostUnits } : null;
  const live = unitCount - contaminated - lostUnits + late * 0.5;
  const be = growth.bePercent * Math.exp(random.normal() * truths.beDeviation);
  const fresh = (live * growth.dryGramsPerUnit * be) / 100;
  const notWeighed = random.next() < truths.notWeighed;
  const weighings: PlannedWeighing[] = [];
  for (let flush = 1; flush <= growth.flushes && !notWeighed; flush += 1) {
    const grams = Math.round(fresh * (flushShares[flush - 1] ?? 0.1) * Math.exp(0.1 * random.normal()));
    const date = day(growth.firstHarvestDays + (flush - 1) * growth.flushDays + between(random, -2, 3));
    if (grams > 50) weighings.push({ date, flush, grams });
  }
  const end = day(growth.firstHarvestDays + growth.flushes * growth.flushDays + between(random, 4, 20));
  return {
    looks: looks.filter(past),
    findings: findings.filter((finding) => past(finding.date)),
    colonisedOn: past(day(18)) && live > 0 ? day(18) : null,
    weighings: weighings.filter((weighing) => past(weighing.date)),
    lost: lost !== null && past(lost.date) ? lost : null,
    closedOn: past(end) && random.next() > 0.05 ? end : null,
    notWeighed,
  };
}
