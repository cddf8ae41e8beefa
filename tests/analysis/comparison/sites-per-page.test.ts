import { expect, test } from 'vitest';
import { sitesPerPage } from '@/lib/analysis/comparison/sites-per-page';

test('a page shows twenty-five sites, fewer where they have very many batches, and never fewer than ten', () => {
  expect(sitesPerPage(1_200, 14)).toBe(25);
  expect(sitesPerPage(500_000, 1_000)).toBe(20);
  expect(sitesPerPage(5_000_000, 1_000)).toBe(10);
  expect(sitesPerPage(0, 0)).toBe(25);
});
