import type { LevelRow } from './calibration-row';

/** Two standard errors of a share of this many trials, in percent. */
export function noisePercent(sharePercent: number, trials: number): number {
  return 2 * Math.sqrt((sharePercent * (100 - sharePercent)) / Math.max(1, trials));
}

/** How often p-values of true null hypotheses fall at or below 5 %; `null` gave no answer. Holds up to 7 %. */
export function rejectionRow(method: string, setting: string, pValues: readonly (number | null)[]): LevelRow {
  const given = pValues.filter((p) => p !== null);
  const found = (100 * given.filter((p) => p <= 0.05).length) / Math.max(1, given.length);
  const missing = pValues.length - given.length;
  return {
    method,
    setting,
    stated: 'at most 5 %',
    found: `${found.toFixed(1)} %${missing > 0 ? `, ${((100 * missing) / pValues.length).toFixed(0)} % without answer` : ''}`,
    holds: found <= 5 + 2 + noisePercent(5, given.length) / 2,
  };
}

/** Coverage of a 95 % interval in one setting. */
export function coverageRow(method: string, setting: string, held: readonly boolean[]): LevelRow {
  const found = (100 * held.filter(Boolean).length) / held.length;
  const noise = noisePercent(95, held.length);
  return {
    method,
    setting,
    stated: '95 % (93 to 97)',
    found: `${found.toFixed(1)} %`,
    holds: found >= 93 - noise && found <= 97 + noise,
  };
}
