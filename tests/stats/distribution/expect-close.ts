import { expect } from 'vitest';

/** Asserts that two numbers agree within a relative difference. */
export function expectClose(computed: number, expected: number, relative: number): void {
  const difference = Math.abs(computed - expected);
  expect(difference, `${computed} for ${expected}`).toBeLessThanOrEqual(relative * Math.abs(expected));
}
