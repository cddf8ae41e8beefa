import type { BuiltReport } from './build-content';
import type { GroundPart } from './ground';
import { tablesTell } from './parts-that-tell';
import { samePeriod } from './same-period';
import { sharesDays } from './shares-days';
import { tellsPart } from './tells-part';
import { headsTell, trainingsTell } from './trainings-tell';

/** Parts whose tables are sums of the days of a period, or nearly: what is left of two is of the days that only one has. */
const parts = ['glance', 'costs', 'methods'] as const;

/**
 * Parts of a report that tell of few sites, or of few people, beside another whose period shares days with its own and is not
 * the same; harvest, residues and sales apart (`baseline-tells`), and practices, which are held one by one.
 */
export function partsBesideDays(other: BuiltReport, built: BuiltReport): GroundPart[] {
  const { rule, trainings, peopleActive } = built.content;
  if (!sharesDays(other.content, built.content) || samePeriod(other.content, built.content)) return [];
  const told = parts.filter(
    (part) =>
      tellsPart(other, part) &&
      tellsPart(built, part) &&
      tablesTell(other.ground[part] ?? {}, built.ground[part] ?? {}, rule),
  );
  return [
    ...told,
    ...(headsTell(other.content.peopleActive, peopleActive, rule) ? (['glance'] as const) : []),
    ...(trainingsTell(other.content.trainings, trainings, rule) ? (['trainings'] as const) : []),
  ];
}
