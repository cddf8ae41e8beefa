import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { emptyFormState, type FormState } from '@/lib/ui/form/field-spec';
import { unlessNoSignal } from '@/lib/ui/form/unless-no-signal';
import { isNoSignal } from '@/lib/ui/page/is-no-signal';

const data = new FormData();
data.set('fresh', '1,36 kg');
data.set('id', 'made-on-the-form');
data.set('password', 'hunter2');
const failing = (error: Error) => async (): Promise<FormState> => {
  throw error;
};
const redirect = Object.assign(new Error('NEXT_REDIRECT'), { digest: 'NEXT_REDIRECT;push;/batches;307;' });

beforeEach(() => {
  vi.stubGlobal('window', {});
  vi.stubGlobal('navigator', { onLine: true });
});
afterEach(() => vi.unstubAllGlobals());

test.each(['Failed to fetch', 'Load failed', 'NetworkError when attempting to fetch resource.'])(
  'a form whose request fails with “%s” keeps everything typed but the password, and says why',
  async (words) => {
    const after = await unlessNoSignal(failing(new TypeError(words)), 'No answer came')(emptyFormState, data);
    expect(after.values).toEqual({ fresh: '1,36 kg', id: 'made-on-the-form' });
    expect(after.errors).toEqual([{ field: '', text: 'No answer came' }]);
  },
);

test('a redirect and a fault of our own go on as they are, also when the signal has just gone', async () => {
  vi.stubGlobal('navigator', { onLine: false });
  await expect(unlessNoSignal(failing(redirect), '')(emptyFormState, data)).rejects.toBe(redirect);
  vi.stubGlobal('navigator', { onLine: true });
  const fault = new TypeError('undefined is not a function');
  await expect(unlessNoSignal(failing(fault), '')(emptyFormState, data)).rejects.toBe(fault);
});

test('whatever fails on a phone that knows of no network fails for want of one', () => {
  expect(isNoSignal(new Error('Connection closed.'))).toBe(false);
  vi.stubGlobal('navigator', { onLine: false });
  expect(isNoSignal(new Error('Connection closed.'))).toBe(true);
});

test('on the server an action stays itself, so that its form is posted without script', () => {
  vi.unstubAllGlobals();
  const action = failing(redirect);
  expect(unlessNoSignal(action, '')).toBe(action);
});
