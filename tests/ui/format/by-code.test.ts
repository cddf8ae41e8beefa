import { expect, test } from 'vitest';
import { byCode } from '@/lib/ui/format/by-code';

test('codes follow each other as people count', () => {
  const codes = ['M-CORN-10', 'M-CORNC-1', 'M-CORN-2', 'M-CORN-1'];
  expect(codes.sort(byCode('en'))).toEqual(['M-CORN-1', 'M-CORN-2', 'M-CORN-10', 'M-CORNC-1']);
});
