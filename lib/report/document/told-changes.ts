import { type DocumentChange, documentChanges } from './document-changes';
import type { ReportDocument } from './report-document';

export type ToldChanges = {
  readonly figures: readonly DocumentChange[];
  /** Figures that the version protects and the records would tell: nothing changed in them that may be told. */
  readonly protectedThen: number;
};

/**
 * What a version tells and the records, as they are now, tell otherwise. The report of now was not held against the others that
 * readers have, as the version was, so a protected figure of the version beside one of now is no change.
 */
export function toldChanges(version: ReportDocument, now: ReportDocument): ToldChanges {
  const all = documentChanges(version, now);
  const figures = all.filter(({ keptBack }) => !keptBack);
  return { figures, protectedThen: all.filter(({ earlier }) => earlier === version.protectedWord).length };
}
