import { expect, test } from 'vitest';
import { armLabel } from '@/lib/records/trial/arm-label';

const lime = { nameEn: 'Cold lime soak', nameEs: 'Remojo frío en cal' };

test('an arm that is called as its method is has its name in the language of the reader', () => {
  expect(armLabel('cold lime soak', lime, 'es')).toBe('remojo frío en cal');
  expect(armLabel('Remojo frío en cal', lime, 'en')).toBe('Cold lime soak');
  expect(armLabel('cold lime soak', lime, 'en')).toBe('cold lime soak');
});

test('what somebody called otherwise stays as it was written', () => {
  expect(armLabel('lime, twelve hours', lime, 'es')).toBe('lime, twelve hours');
  expect(armLabel('two hours', null, 'es')).toBe('two hours');
});
