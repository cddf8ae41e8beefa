import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { countsLine, playwrightCounts, vitestCounts } from '@/lib/launch/test-counts';
import { temporaryFolder } from '../support/temporary-folder';

const file = path.join(temporaryFolder('report'), 'report.json');
const report = (content: unknown) => {
  writeFileSync(file, JSON.stringify(content));
  return file;
};

describe('the closing line of npm test', () => {
  it('adds up passed and failed', () => {
    const counts = [
      { passed: 810, failed: 0, skipped: 0 },
      { passed: 31, failed: 2, skipped: 0 },
    ];
    expect(countsLine(counts)).toBe('841 passed, 2 failed');
  });

  it('says how many were skipped where any were', () => {
    expect(countsLine([{ passed: 3, failed: 0, skipped: 1 }])).toBe('3 passed, 0 failed, 1 skipped');
  });
});

describe('the counts of a report', () => {
  it('take a test file that could not be loaded as one failed', () => {
    const content = {
      numPassedTests: 5,
      numFailedTests: 1,
      numPendingTests: 2,
      numTodoTests: 1,
      testResults: [
        { status: 'failed', assertionResults: [] },
        { status: 'failed', assertionResults: [{}] },
      ],
    };
    expect(vitestCounts(report(content))).toEqual({ passed: 5, failed: 2, skipped: 3 });
  });

  it('take a browser test that passed only when repeated as failed', () => {
    const content = { stats: { expected: 7, unexpected: 1, flaky: 1, skipped: 0 }, errors: [{}] };
    expect(playwrightCounts(report(content))).toEqual({ passed: 7, failed: 3, skipped: 0 });
  });

  it('are nothing where no report was written', () => {
    expect(vitestCounts(`${file}.absent`)).toEqual({ passed: 0, failed: 0, skipped: 0 });
  });
});
