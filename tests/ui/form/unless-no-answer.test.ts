import { afterEach, expect, test, vi } from 'vitest';
import { unlessNoAnswer } from '@/lib/ui/form/unless-no-answer';

type Links = { readonly made: readonly string[]; readonly refused?: string };

const data = new FormData();
const withoutAnswer = async (): Promise<Links> => {
  throw new TypeError('Failed to fetch');
};
const keep = ({ made }: Links) => ({ made, refused: 'No answer came' });

afterEach(() => vi.unstubAllGlobals());

test('what a form has shown stays where no answer comes, with the reason beside it', async () => {
  vi.stubGlobal('window', {});
  vi.stubGlobal('navigator', { onLine: true });
  const after = await unlessNoAnswer(withoutAnswer, keep)({ made: ['one link'] }, data);
  expect(after).toEqual({ made: ['one link'], refused: 'No answer came' });
});

test('a fault of the server goes on as it is', async () => {
  vi.stubGlobal('window', {});
  vi.stubGlobal('navigator', { onLine: false });
  const fault = Object.assign(new Error('broken'), { digest: '42' });
  const failing = async (): Promise<Links> => Promise.reject(fault);
  await expect(unlessNoAnswer(failing, keep)({ made: [] }, data)).rejects.toBe(fault);
});

test('on the server the action stays itself', () => {
  expect(unlessNoAnswer(withoutAnswer, keep)).toBe(withoutAnswer);
});
