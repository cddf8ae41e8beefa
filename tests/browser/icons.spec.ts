import { expect, test } from './people';

test('the icons that pages and home screens name are pictures, also where a browser asks unasked', async ({
  request,
}) => {
  const manifest = (await (await request.get('/manifest.webmanifest')).json()) as {
    icons: { src: string }[];
  };
  expect(manifest.icons.length).toBeGreaterThan(1);
  for (const address of [
    '/icons/mark.svg',
    '/icons/180',
    '/favicon.ico',
    ...manifest.icons.map(({ src }) => src),
  ]) {
    const answer = await request.get(address);
    expect([address, answer.status()]).toEqual([address, 200]);
    expect(answer.headers()['content-type']).toMatch(/^image\//);
  }
});
