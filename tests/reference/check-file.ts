import { compareWithExpected, type LeafComparison } from './compare-with-expected';
import { findNotOffered, type NotOffered } from './not-offered';
import type { ReferenceCase, ReferenceFile, ReferenceHandler } from './reference-handler';

export type FileReport = {
  passed: number;
  failed: number;
  numbers: number;
  worstRelativeError: number;
  worstToleranceUsed: number;
  readonly failures: string[];
  /** Leaves of each not-offered entry, by its text. */
  readonly notOffered: Map<string, number>;
};

/** Runs all cases of one file. A case passes when each of its expected leaves does. */
export function checkFile(
  file: ReferenceFile,
  handler: ReferenceHandler | undefined,
  list: readonly NotOffered[],
): FileReport {
  const report: FileReport = {
    passed: 0,
    failed: 0,
    numbers: 0,
    worstRelativeError: 0,
    worstToleranceUsed: 0,
    failures: [],
    notOffered: new Map(),
  };
  for (const referenceCase of file.cases) {
    const failures = handler
      ? checkCase(file, handler, referenceCase, list, report)
      : [`${referenceCase.id}: no handler for method "${file.method}"`];
    if (failures.length === 0) report.passed += 1;
    else report.failed += 1;
    report.failures.push(...failures);
  }
  return report;
}

function checkCase(
  file: ReferenceFile,
  handler: ReferenceHandler,
  referenceCase: ReferenceCase,
  list: readonly NotOffered[],
  report: FileReport,
): string[] {
  const { id, input, expected, r_call: rCall } = referenceCase;
  const context = { file, caseId: id, input, rCall, expected };
  let leaves: LeafComparison[];
  try {
    const computed = handler.run(input, context);
    leaves = compareWithExpected(expected, computed, (path) => handler.tolerance(path, file, context));
  } catch (error) {
    return [`${id}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`];
  }
  const failures: string[] = [];
  for (const leaf of leaves) {
    // Only what was not computed can be excused; a wrong number never is.
    const entry = leaf.computed === undefined ? findNotOffered(list, file.method, leaf.path) : undefined;
    if (entry) {
      count(report.notOffered, `${entry.path}: ${entry.reason}`);
      continue;
    }
    report.numbers += 1;
    if (!leaf.passed) {
      failures.push(
        `${id} ${leaf.path}: expected ${String(leaf.expected)}, computed ${String(leaf.computed)}`,
      );
    }
    report.worstRelativeError = Math.max(report.worstRelativeError, leaf.relativeError);
    report.worstToleranceUsed = Math.max(report.worstToleranceUsed, leaf.toleranceUsed);
  }
  return failures;
}

function count(counts: Map<string, number>, text: string): void {
  counts.set(text, (counts.get(text) ?? 0) + 1);
}
