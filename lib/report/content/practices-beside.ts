import { besideStretches } from './beside-stretches';
import type { BuiltReport } from './build-content';
import type { FunderReportContent, ReportCell } from './funder-report';
import { saidKept } from './keep-back';
import { samePeriod } from './same-period';
import { sharesDays } from './shares-days';
import { tellsFew } from './tells-few';
import { tellsPart } from './tells-part';

const growersOf = ({ adopted }: FunderReportContent, practice: string): number | undefined => {
  const growers = adopted.find((row) => row.practice === practice)?.growers;
  return growers?.kind === 'shown' ? growers.people : undefined;
};

/** Practices whose growers, less those of another report, are fewer people than may be told. */
export function growersThatTell(built: FunderReportContent, other: FunderReportContent): string[] {
  return built.adopted
    .filter(({ practice }) => {
      const [now, then] = [growersOf(built, practice), growersOf(other, practice)];
      if (now === undefined || then === undefined || now === then) return false;
      return Math.abs(now - then) < built.rule.minSites;
    })
    .map(({ practice }) => `adopted ${practice}`);
}

/**
 * Practices of a report, by the names of their tables in its ground, whose number of sites tells of few beside a report over
 * other days. Each practice is a number of its own: the others may still be told.
 */
export function practicesThatTell(built: BuiltReport, earlier: readonly BuiltReport[]): Set<string> {
  const own = Object.entries(built.ground.practices ?? {});
  const { rule } = built.content;
  const others = earlier.filter(
    (one) => tellsPart(one, 'practices') && !samePeriod(one.content, built.content),
  );
  return new Set([
    ...besideStretches(built, others, ['practices']).map(({ table }) => table),
    ...others.flatMap((one) => {
      const shared = sharesDays(one.content, built.content);
      const tables = own
        .filter(([table, now]) => {
          const then = one.ground.practices?.[table] ?? [];
          return shared && tellsFew(then, now, rule, true);
        })
        .map(([table]) => table);
      return [...tables, ...(shared ? growersThatTell(built.content, one.content) : [])];
    }),
  ]);
}

/** A report without these numbers of sites. */
export function withoutPractices({ content, ground }: BuiltReport, tables: ReadonlySet<string>): BuiltReport {
  if (tables.size === 0) return { content, ground };
  const cell = (name: string, told: ReportCell): ReportCell =>
    tables.has(`${name} ${told.key}`) ? { key: told.key, kind: 'protected' } : told;
  return {
    content: {
      ...saidKept(content, 'practices'),
      practices: content.practices.map((row) => ({ ...row, sites: cell('first', row.sites) })),
      adopted: content.adopted.map((row) => ({
        ...row,
        adopted: cell('adopted', row.adopted),
        standing: cell('standing', row.standing),
        growers: tables.has(`adopted ${row.practice}`) ? { kind: 'protected' } : row.growers,
      })),
    },
    ground: {
      ...ground,
      practices: Object.fromEntries(
        Object.entries(ground.practices ?? {}).map(([table, sums]) => [table, tables.has(table) ? [] : sums]),
      ),
    },
  };
}
