import type { FunderReportContent } from './funder-report';
import type { GroundTables } from './ground';

type Told = Partial<FunderReportContent>;

/** A part of a report: what it tells, and what its sums were made of. */
export type ReportPart<Content extends Told = Told> = {
  readonly content: Content;
  readonly ground: GroundTables;
};
